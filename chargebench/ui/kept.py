"""What this computer remembers of itself; nothing of it belongs to the records."""

from PySide6.QtCore import QSettings


def kept() -> QSettings:
    """Where this bench keeps its ports, its language and how it looks."""
    ini, user = QSettings.Format.IniFormat, QSettings.Scope.UserScope
    return QSettings(ini, user, "chargebench", "bench")
