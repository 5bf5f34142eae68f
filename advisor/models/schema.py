"""JSON Schema of a case as people write it: texts with units, words, yes and no."""

import re
from typing import Any

from advisor.models.case import Case
from advisor.models.fields import LONGEST_TEXT, Quantity, Shape, Spec, specs
from advisor.models.section import Section
from advisor.units import NUMBER_TEXT, SLOPE

ONE_VALUE = rf"[-+]?({NUMBER_TEXT}|[0-9]* ?[¼½¾⅓⅔⅛⅜⅝⅞])([ ]*[^0-9,: ][^,:]*)?"
DRAFT = "https://json-schema.org/draft/2020-12/schema"


def case_schema() -> dict[str, Any]:
    """JSON Schema, draft 2020-12, of a case file. Units and limits of a quantity are checked on reading, not here."""
    return {
        "$schema": DRAFT,
        "title": "case",
        "description": "One piece of work on one lathe, held and cut in one way, by one person.",
        **_section(Case),
    }


def _section(model: type[Section]) -> dict[str, Any]:
    fields = model.declared
    return {
        "type": "object",
        "additionalProperties": False,
        "required": [name for name, info in fields.items() if info.required],
        "properties": {
            name: {"description": _about(spec, fields[name].description), **_field(spec)}
            for name, spec in specs(model).items()
        },
    }


def _about(spec: Spec, description: str | None) -> str:
    if spec.section is not None:
        return description or (spec.section.__doc__ or "").strip()
    return f"{description}; {spec.accepted}"


def _field(spec: Spec) -> dict[str, Any]:
    if spec.section is not None:
        return _section(spec.section)
    if spec.item is not None:
        return {"type": "array", "minItems": spec.size[0], "maxItems": spec.size[1], "items": _field(spec.item)}
    if spec.shape is Shape.WORD:
        return {"enum": list(spec.words)}
    if spec.shape is Shape.FLAG:
        return {"enum": ["yes", "no", True, False, "true", "false"]}
    if spec.quantity is None:
        return {"type": "string", "minLength": 1, "maxLength": LONGEST_TEXT}
    if spec.shape is Shape.COUNT:
        whole = {"type": "integer", "minimum": spec.quantity.least, "maximum": spec.quantity.most}
        return {"anyOf": [whole, {"type": "string", "pattern": "^[0-9]+$"}]}
    return _quantity(spec, spec.quantity)


def _quantity(spec: Spec, quantity: Quantity) -> dict[str, Any]:
    if quantity.kind is SLOPE:
        return {"type": "string", "pattern": f"^1 ?(:|in) ?{NUMBER_TEXT}$"}
    choices: list[dict[str, Any]] = [
        {"type": "string", "pattern": f"^{ONE_VALUE}$", "examples": _examples(quantity)},
        {"type": "number"},
    ]
    if spec.shape is Shape.PAIR:
        value = {"anyOf": choices}
        return {
            "anyOf": [
                {"type": "string", "pattern": f"^{ONE_VALUE} ?: ?{ONE_VALUE}$"},
                {"type": "object", "minProperties": 1, "maxProperties": 1, "additionalProperties": value},
                {"type": "array", "minItems": 2, "maxItems": 2, "items": value},
            ]
        }
    if spec.words:
        choices.append({"enum": list(spec.words)})
    return {"anyOf": choices}


def _examples(quantity: Quantity) -> list[str]:
    return [part for part in re.split(r",? or |, ", quantity.kind.example) if part]
