"""A script that completes commands, options, fields, names and words in bash. The shell runs it alone: no Python."""

from __future__ import annotations

import argparse
from collections.abc import Iterable, Mapping

from advisor.models.case import Case
from advisor.models.fields import Shape, field_names, spec_at
from advisor.parser import CASE, COMMANDS, LIST_KINDS, SHELLS, Parser, build

HEAD = """\
# Completion of `advisor` for bash, made by `advisor completion bash`. Keep it where bash looks, for example:
#   advisor completion bash > ~/.local/share/bash-completion/completions/advisor
"""
BODY = """\
_advisor() {
    local line=${COMP_LINE:0:COMP_POINT} cur command= words= files= name
    local -a typed found=()
    cur=${line##*[[:space:]]}
    read -ra typed <<<"${line%"$cur"}"
    command=${typed[1]:-}
    COMPREPLY=()
    if [ -z "$command" ]; then
        words=$(_advisor_commands)
    elif [ "${typed[-1]}" = --units ]; then
        words='metric inch'
    elif [ "${typed[-1]}" = -o ]; then
        files=all
    elif [[ $cur == -* ]]; then
        words=$(_advisor_options "$command")
    elif [[ $cur == *=* ]]; then
        name=${cur%%=*}
        words=$(_advisor_values "$name")
        cur=${cur#*=}
        [[ $COMP_WORDBREAKS == *=* ]] && name= || name=$name=
    else
        case $command in
            batch) files=folders ;;
            CASES) files=cases words=$(_advisor_fields) ;;
            reckon)
                words=$(_advisor_figures)
                [ -z "${typed[2]:-}" ] || words=$(_advisor_inputs "${typed[2]}") ;;
            *) words=$(_advisor_words "$command") ;;
        esac
    fi
    while IFS= read -r one; do found+=("$one"); done < <(
        compgen -W "$words" -- "$cur" | while IFS= read -r one; do
            case $one in *=) echo "$one" ;; *) echo "${name:-}$one " ;; esac
        done
        [ -z "$files" ] || compgen -f -- "$cur" | while IFS= read -r one; do
            if [ -d "$one" ]; then printf '%q/\\n' "$one"; continue; fi
            case $files:$one in
                all:* | cases:*.yaml | cases:*.yml | cases:*.toml | cases:*.json) printf '%q \\n' "$one" ;;
            esac
        done
    )
    COMPREPLY=("${found[@]}")
}
complete -o nospace -F _advisor advisor
"""


def _function(name: str, cases: Mapping[str, Iterable[str]]) -> str:
    """A function of the shell that prints words for its first argument."""
    rows = "".join(f"        {key}) echo '{' '.join(words)}' ;;\n" for key, words in cases.items())
    return f"_advisor_{name}() {{\n    case $1 in\n{rows}    esac\n}}\n"


def _constant(name: str, words: Iterable[str]) -> str:
    return f"_advisor_{name}() {{ echo '{' '.join(words)}'; }}\n"


def _options(parser: Parser) -> dict[str, list[str]]:
    """The options of every command, from the parser itself."""
    commands = next(action for action in parser._actions if isinstance(action, argparse._SubParsersAction))
    return {
        name: [option for action in one._actions for option in action.option_strings]
        for name, one in commands.choices.items()
    }


def _values() -> dict[str, tuple[str, ...]]:
    """The words of every field of a case that takes one of a list."""
    found: dict[str, tuple[str, ...]] = {}
    for name in field_names(Case):
        spec = spec_at(Case, tuple(name.split(".")))
        if spec is not None and spec.shape is Shape.FLAG:
            found[name] = ("yes", "no")
        elif spec is not None and spec.words:
            found[name] = spec.words
    return found


def _words() -> dict[str, Iterable[str]]:
    from advisor.centers.inputs import FIELDS
    from advisor.centers.make_inputs import FIELDS as MAKING
    from advisor.figure import all_figures
    from advisor.models.limits import limit_names
    from advisor.models.methods import all_methods
    from advisor.rulebook import load_book

    names = {*all_figures(), *limit_names(), *(method.id for method in all_methods())}
    names.update(rule.name for rule in load_book().rules)
    return {
        "center": [f"{name}=" for name in dict.fromkeys((*FIELDS, *MAKING))],
        "explain": sorted(names),
        "list": LIST_KINDS,
        "schema": ("case", "answer"),
        "completion": SHELLS,
    }


def bash() -> str:
    """The whole script."""
    from advisor.figure import all_figures

    figures = all_figures()
    cases = [name for name, command in COMMANDS.items() if command.words == CASE or name == "compare"]
    return "".join(
        (
            HEAD,
            _constant("commands", COMMANDS),
            _constant("fields", (f"{name}=" for name in field_names(Case) if not name.startswith("expect."))),
            _constant("figures", figures),
            _function("options", _options(build())),
            _function("values", _values()),
            _function("inputs", {name: [f"{key}=" for key in figure.inputs] for name, figure in figures.items()}),
            _function("words", _words()),
            BODY.replace("CASES", " | ".join(cases)),
        )
    )
