"""Take the pictures of the user guide anew from the real window: python -m tests.guide_pictures."""

import tempfile
from pathlib import Path

from PIL import Image

from tests.screens import Look, screen, take

PICTURES = Path(__file__).resolve().parents[1] / "resources" / "guide" / "pictures"
LOOK = Look("en", dark=False, text=1.0, wide=1180, high=780)
WIDE_PX, COLOURS = 900, 64
SHOWN = {
    "as_found": "job",
    "evacuation": "vacuum",
    "weigh_in": "weigh-in",
    "stock": "stock",
    "records-usage": "records",
}


def main() -> None:
    """Write each picture, small enough for the program to carry."""
    PICTURES.mkdir(exist_ok=True)
    with screen(), tempfile.TemporaryDirectory() as away:
        for part, name in SHOWN.items():
            take(Path(away), [LOOK], part)
            taken = Path(away, str(LOOK))
            found = next(p for p in sorted(taken.glob("*.png")) if p.stem.endswith(part))
            with Image.open(found) as picture:
                small = picture.convert("RGB")
                small.thumbnail((WIDE_PX, WIDE_PX), Image.Resampling.LANCZOS)
                small.quantize(COLOURS).save(PICTURES / f"{name}.png", optimize=True)


if __name__ == "__main__":
    main()
