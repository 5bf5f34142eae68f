"""Drawings: shapes, their writers for SVG and DXF R12, and the views of a drive center."""
