"""Desktop refrigerant charge and recovery workbook."""

__version__ = "0.1.0"
