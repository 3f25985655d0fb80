"""Commands that are more than a line or two; `__main__` knows them all."""
