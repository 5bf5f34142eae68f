"""Case files in YAML, TOML and JSON, and `field=value` words, read into a case; a case written back."""

from advisor.reading.case_file import read_case, read_text
from advisor.reading.problems import InputFault, Problem
from advisor.reading.write import write_case

__all__ = ["InputFault", "Problem", "read_case", "read_text", "write_case"]
