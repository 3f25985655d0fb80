"""Pure functions on quantities: what a reading, a charge or a test amounts to, with sources."""
