"""Scales and gauges on a serial line: how they speak, what they say, whether it rests.

The only door to pyserial; nothing here knows a window. `settings` is for forms and needs no
port; `listening` brings pyserial in.
"""

from chargebench.instruments.settings import LineSettings

__all__ = ["LineSettings"]
