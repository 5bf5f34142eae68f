"""The sheet to pin up by the lathe: an answer as one page, written as PDF, HTML or SVG."""

from advisor.report.sheet.page import Page

__all__ = ["Page"]
