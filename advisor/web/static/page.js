// Asks while somebody types and puts the answer beside the form. It never writes into a field.
"use strict";
(() => {
  const form = document.getElementById("question");
  const answer = document.getElementById("answer");
  const line = document.getElementById("line");
  const before = document.getElementById("before");
  const byId = (id) => document.getElementById(id);
  const PAUSE = 350; // milliseconds without a key before the question goes out
  let timer = 0;
  let running = null;
  let count = 0;
  let settled = before.value; // the question that the answer on the page belongs to
  let touched = new Set();

  const ask = async () => {
    clearTimeout(timer);
    const mine = ++count;
    if (running) running.abort();
    running = new AbortController();
    document.body.classList.add("late");
    answer.setAttribute("aria-busy", "true");
    let told;
    try {
      const response = await fetch("/live", {
        method: "POST", body: new URLSearchParams(new FormData(form)), signal: running.signal,
      });
      told = await response.json();
    } catch (fault) {
      if (mine !== count) return;
      told = { error: "The page's program does not answer. What you typed is still here; start it again and go on." };
    }
    if (mine !== count) return; // a later question is on its way
    show(told);
  };

  const show = (told) => {
    answer.removeAttribute("aria-busy");
    if (told.error !== undefined) {
      line.textContent = told.error;
      byId("wrong-").textContent = told.error;
      byId("wrong-").hidden = false;
      return;
    }
    mark(told.problems);
    move(new Set(told.shown));
    if (told.answer === null) {
      line.textContent = Object.keys(told.problems).some((name) => touched.has(name) && name !== current()) ?
        "No answer yet: see the marked field." : "";
      return; // the last answer stays, pale, until there is a new one
    }
    document.body.classList.remove("late");
    take(told.assumed);
    put(told.answer);
    line.textContent = told.line;
    settled = told.again;
  };

  const current = () => (document.activeElement && document.activeElement.name) || "";

  // Nobody is told off for a field they have not been to, nor for the one they are still typing in.
  const mark = (problems) => {
    for (const place of form.querySelectorAll(".error")) {
      const name = place.id.slice("wrong-".length);
      const said = problems[name] || [];
      const due = said.length > 0 && (name === "" || (touched.has(name) && name !== current()));
      place.textContent = due ? said.join(" ") : "";
      place.hidden = !due;
      const field = byId(name);
      if (field) due ? field.setAttribute("aria-invalid", "true") : field.removeAttribute("aria-invalid");
    }
  };

  const filled = (field) => [...field.querySelectorAll("input, select")].some(
    (one) => one.type === "checkbox" ? one.checked : one.value !== "");

  // Fields that matter come up, empty ones that do not go back; the one in use stays where it is.
  const order = new Map([...form.querySelectorAll(".field[data-name]")].map((field) => [field, 0]));
  const rank = JSON.parse(form.dataset.order);
  for (const field of order.keys()) order.set(field, rank.indexOf(field.dataset.name));
  const move = (wanted) => {
    for (const group of form.querySelectorAll(".group[data-group]")) {
      const more = group.querySelector(".more");
      const [open, closed] = [group.querySelector(".fields"), more.querySelector(".fields")];
      for (const field of group.querySelectorAll(".field")) {
        const up = wanted.has(field.dataset.name) || filled(field);
        const home = up ? open : closed;
        if (field.parentElement === home || field.contains(document.activeElement)) continue;
        const next = [...home.children].find((other) => order.get(other) > order.get(field));
        home.insertBefore(field, next || null);
      }
      more.querySelector(".count").textContent = String(closed.children.length);
      more.hidden = closed.children.length === 0;
    }
  };

  const take = (assumed) => {
    for (const field of form.querySelectorAll(".field[data-name]")) {
      const value = assumed[field.dataset.name];
      const input = field.querySelector("input[data-example]");
      if (input) input.placeholder = value ? `taken as ${value}` : input.dataset.example;
      const silent = field.querySelector("option[data-not-said]");
      if (silent) silent.textContent = value ? `not said; taken as ${value.replaceAll("-", " ")}` : "not said";
    }
  };

  const put = (html) => {
    const open = new Set([...answer.querySelectorAll("details[open]")].map((one) => one.dataset.key));
    const held = answer.contains(document.activeElement) && document.activeElement.closest("details");
    const key = held ? held.dataset.key : null;
    answer.innerHTML = html; // made by this program's own templates, which escape everything
    for (const one of answer.querySelectorAll("details")) {
      one.open = open.has(one.dataset.key);
      if (one.dataset.key === key) one.querySelector("summary").focus({ preventScroll: true });
    }
  };

  const soon = () => { clearTimeout(timer); timer = setTimeout(ask, PAUSE); };

  form.addEventListener("focusin", (event) => {
    if (event.target.name && event.target.name !== "before") before.value = settled;
  });
  form.addEventListener("input", (event) => {
    touched.add(event.target.name);
    const several = event.target.closest(".several");
    if (several) {
      const words = [...several.querySelectorAll(":checked + span")].map((one) => one.textContent);
      several.querySelector(".chosen").textContent = words.join(", ") || "nothing said";
    }
    soon();
  });
  form.addEventListener("change", (event) => { touched.add(event.target.name); soon(); });
  form.addEventListener("focusout", (event) => { if (touched.has(event.target.name)) soon(); });
  form.addEventListener("submit", (event) => {
    if (event.submitter && (event.submitter.formAction !== form.action || event.submitter.name)) return;
    event.preventDefault();
    for (const field of form.querySelectorAll("[name]")) touched.add(field.name);
    ask().then(() => {
      const wrong = form.querySelector("[aria-invalid=true]");
      (wrong || answer).focus();
    });
  });
})();
