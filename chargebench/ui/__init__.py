"""The window: Qt only. It formats and forwards; what a shop can do is in the desk."""
