"""The wheel is all an empty environment needs: it starts, and does the sample shop's job."""

import os
import subprocess
import sys
import sysconfig
import venv
import zipfile
from pathlib import Path

import pytest

ROOT = Path(__file__).resolve().parent.parent.parent
pytestmark = pytest.mark.slow


def _call(*command: str | Path, cwd: Path) -> str:
    """Run a command away from the checkout, and give what it printed."""
    outside = {k: v for k, v in os.environ.items() if k not in ("PYTHONPATH", "DISPLAY")}
    done = subprocess.run(
        [*map(str, command)], cwd=cwd, env=outside, capture_output=True, text=True, timeout=600
    )
    assert done.returncode == 0, done.stdout + done.stderr
    return done.stdout


@pytest.fixture(scope="module")
def wheel(tmp_path_factory: pytest.TempPathFactory) -> Path:
    """The wheel, built without a network."""
    folder = tmp_path_factory.mktemp("wheel")
    _call(sys.executable, "-m", "hatchling", "build", "-t", "wheel", "-d", folder, cwd=ROOT)
    (built,) = folder.glob("*.whl")
    return built


@pytest.fixture(scope="module")
def bin_folder(wheel: Path, tmp_path_factory: pytest.TempPathFactory) -> Path:
    """Programs of an environment that has the wheel; third-party packages are borrowed."""
    home = tmp_path_factory.mktemp("installed") / "env"
    venv.create(home, with_pip=False)
    places = {"base": str(home), "platbase": str(home)}
    packages = Path(sysconfig.get_path("purelib", "venv", places))
    # Only the folder is lent, not what its own .pth files name, such as this checkout.
    lent = sysconfig.get_path("purelib")
    (packages / "lent.pth").write_text(lent + "\n", encoding="utf-8")
    programs = Path(sysconfig.get_path("scripts", "venv", places))
    pip = [sys.executable, "-m", "pip", "--python", str(home), "install", "--quiet"]
    _call(*pip, "--no-deps", "--no-index", "--force-reinstall", wheel, cwd=home)
    where = _call(
        programs / "python", "-c", "import chargebench; print(chargebench.__file__)", cwd=home
    )
    assert Path(where.strip()).is_relative_to(packages)
    return programs


def test_that_the_wheel_carries_what_the_program_reads(wheel: Path) -> None:
    packed = set(zipfile.ZipFile(wheel).namelist())
    shipped = [
        path.relative_to(ROOT).as_posix()
        for folder in ("resources", "sample_jobs")
        for path in (ROOT / folder).rglob("*")
        if path.is_file() and path.suffix not in (".py", ".pyc")
    ]
    assert shipped
    assert [name for name in shipped if f"chargebench/{name}" not in packed] == []


def test_that_the_wheel_carries_no_script_of_the_checkout(wheel: Path) -> None:
    packed = zipfile.ZipFile(wheel).namelist()
    assert [n for n in packed if n.startswith("chargebench/resources/") and n.endswith(".py")] == []


def test_that_the_installed_program_tells_its_version(wheel: Path, bin_folder: Path) -> None:
    version = wheel.name.split("-")[1]
    assert _call(bin_folder / "chargebench", "--version", cwd=bin_folder).split()[-1] == version


def test_that_the_installed_program_exports_the_sample_shop(
    bin_folder: Path, tmp_path: Path
) -> None:
    out = tmp_path / "export"
    command = (bin_folder / "python", "-m", "chargebench", "sample", "--headless", "--out", out)
    _call(*command, cwd=tmp_path)
    left = {path.name for path in out.rglob("*") if path.is_file()}
    assert {"audit.xlsx", "checklist.pdf", "manifest.json"} <= left
