"""Set up chargebench and start it (`run`), or set it up and test it (`test`).

Needs Python 3.11 or newer and nothing else. Makes `.venv` beside `pyproject.toml`, installs the
pinned versions, and remembers what it installed, so that a second call takes seconds. Words after
`run` go to the program, words after `test` to pytest.
"""

import sys

if sys.version_info < (3, 11):  # noqa: UP036  an older Python must be able to read as far as this
    sys.exit(
        "chargebench needs Python 3.11 or newer; this is Python %d.%d at %s.\n"  # noqa: UP031
        "Install a newer Python and start this script with it, for example: "
        "python3.12 resources/bootstrap.py run"
        % (sys.version_info[0], sys.version_info[1], sys.executable)
    )

import ctypes
import hashlib
import importlib.util
import json
import os
import shutil
import subprocess
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
VENV = ROOT / ".venv"
STAMPS = VENV / "chargebench-installed.json"
PINS = {"run": ROOT / ".constraints.txt", "test": ROOT / ".constraints-test.txt"}
USAGE = """usage: python3 resources/bootstrap.py run  [words for the program]
       python3 resources/bootstrap.py test [--office] [--screen] [words for pytest]

run       set up if needed, then open the sample shop (without a display: do its job headless)
test      set up if needed, then run the whole test suite
--office  also install LibreOffice Calc where this script may (always so when CI=true)
--screen  show the windows of the tests on a virtual X screen instead of nowhere"""

# What the Qt libraries of the wheel load from the system, and the Debian package that has it.
LIBRARIES = {
    "libEGL.so.1": "libegl1",
    "libGL.so.1": "libgl1",
    "libglib-2.0.so.0": "libglib2.0-0",
    "libfontconfig.so.1": "libfontconfig1",
    "libfreetype.so.6": "libfreetype6",
    "libdbus-1.so.3": "libdbus-1-3",
    "libgssapi_krb5.so.2": "libgssapi-krb5-2",
    "libxkbcommon.so.0": "libxkbcommon0",
    "libxkbcommon-x11.so.0": "libxkbcommon-x11-0",
    "libX11-xcb.so.1": "libx11-xcb1",
    "libxcb-cursor.so.0": "libxcb-cursor0",
    "libxcb-icccm.so.4": "libxcb-icccm4",
    "libxcb-image.so.0": "libxcb-image0",
    "libxcb-keysyms.so.1": "libxcb-keysyms1",
    "libxcb-randr.so.0": "libxcb-randr0",
    "libxcb-render-util.so.0": "libxcb-render-util0",
    "libxcb-shape.so.0": "libxcb-shape0",
    "libxcb-sync.so.1": "libxcb-sync1",
    "libxcb-xfixes.so.0": "libxcb-xfixes0",
    "libxcb-xkb.so.1": "libxcb-xkb1",
}
TEST_PROGRAMS = {
    "Xvfb": "xvfb",
    "xvfb-run": "xvfb",
    "xauth": "xauth",
    "pdftotext": "poppler-utils",
    "pdftoppm": "poppler-utils",
}
OFFICE = {"soffice": "libreoffice-calc"}


def say(text: str) -> None:
    """Tell the person what is being done, at once even where output is collected."""
    print(f"chargebench: {text}", flush=True)


def stop(text: str) -> None:
    """End with a message that says what to do."""
    sys.exit(f"chargebench: {text}")


# System packages


def loads(library: str) -> bool:
    """Whether the system's loader finds the library."""
    try:
        ctypes.CDLL(library)
    except OSError:
        return False
    return True


def as_root() -> list[str] | None:
    """Words in front of a command that needs root, or None where that is not possible unasked."""
    if os.geteuid() == 0:
        return []
    if shutil.which("sudo") is None:
        return None
    asked = subprocess.run(["sudo", "-n", "true"], stdin=subprocess.DEVNULL, capture_output=True)
    return ["sudo", "-n"] if asked.returncode == 0 else None


def call_quietly(command: list[str]) -> bool:
    """Call without questions and without output but errors; say whether it went well."""
    nothing = subprocess.DEVNULL
    return subprocess.run(command, stdin=nothing, stdout=nothing).returncode == 0


def install_packages(packages: list[str], why: str) -> bool:
    """Install Debian packages where that is possible unasked, elsewhere name them."""
    names = " ".join(packages)
    root = as_root() if shutil.which("apt-get") else None
    if root is None:
        if shutil.which("apt-get"):
            say(f"{why}; to install: sudo apt-get install {names}")
        else:
            say(f"{why}; on Debian the packages are called {names}: install your system's like")
        return False
    say(f"{why}; installing {names}")
    apt = [*root, "env", "DEBIAN_FRONTEND=noninteractive", "apt-get", "-qq"]
    # One list out of order must not stop the others; the installation that follows tells.
    call_quietly([*apt, "update"])
    done = call_quietly([*apt, "install", "-y", "--no-install-recommends", *packages])
    if not done:
        say(f"apt-get could not install {names}; its own words are above")
    return done


def provide_system_packages(wanted_programs: dict[str, str]) -> None:
    """See to the system libraries Qt loads and the programs tests call (Linux only)."""
    if not sys.platform.startswith("linux"):
        return
    libraries = [name for name in LIBRARIES if not loads(name)]
    if libraries:
        packages = [LIBRARIES[name] for name in libraries]
        install_packages(packages, f"the window needs {', '.join(libraries)}")
    programs = [name for name in wanted_programs if shutil.which(name) is None]
    if programs:
        packages = sorted({wanted_programs[name] for name in programs})
        install_packages(packages, f"the tests want {', '.join(programs)}")


# The virtual environment


def venv_python() -> Path:
    """The interpreter inside `.venv`."""
    return VENV / ("Scripts/python.exe" if os.name == "nt" else "bin/python")


def clean_environment() -> dict[str, str]:
    """The caller's environment less what would lead Python or pip out of `.venv`."""
    astray = {
        *("PYTHONHOME", "PYTHONPATH", "PYTHONSAFEPATH", "VIRTUAL_ENV", "__PYVENV_LAUNCHER__"),
        *("PIP_TARGET", "PIP_PREFIX", "PIP_USER", "PIP_ROOT", "PIP_REQUIRE_VIRTUALENV"),
    }
    return {name: value for name, value in os.environ.items() if name not in astray}


def sound_venv() -> bool:
    """Whether `.venv` is whole, lies where it was made, and is of the Python that runs this."""
    here = str(VENV)
    program = "import pip, sys; print(*sys.version_info[:2])"
    try:
        answer = subprocess.run(
            [venv_python(), "-c", program], capture_output=True, text=True, env=clean_environment()
        )
    except OSError:
        return False
    same_python = answer.stdout.split() == [str(part) for part in sys.version_info[:2]]
    # A folder that was moved keeps scripts which start with the old place's Python.
    return answer.returncode == 0 and same_python and read_stamps().get("place", here) == here


def provide_venv_module() -> None:
    """Debian ships Python without what makes a virtual environment: add or name it."""
    if importlib.util.find_spec("ensurepip") and importlib.util.find_spec("venv"):
        return
    package = f"python{sys.version_info[0]}.{sys.version_info[1]}-venv"
    install_packages([package], "this Python cannot make a virtual environment")
    importlib.invalidate_caches()
    if importlib.util.find_spec("ensurepip") is None:
        stop(f"this Python lacks the modules venv and ensurepip; install {package} and try again")


def make_venv() -> None:
    """Make `.venv` anew."""
    provide_venv_module()
    if VENV.is_symlink() or VENV.is_file():
        VENV.unlink()
    elif VENV.exists():
        say("removing .venv, which is broken, moved or of another Python version")
        shutil.rmtree(VENV)
    say(f"making .venv with Python {sys.version.split()[0]}")
    made = subprocess.run([sys.executable, "-m", "venv", str(VENV)], env=clean_environment())
    if made.returncode != 0 or not sound_venv():
        stop("could not make .venv; what Python said is above")


def pip(*arguments: str) -> None:
    """Call pip inside `.venv`."""
    command = [str(venv_python()), "-m", "pip", "--no-input", "--disable-pip-version-check"]
    done = subprocess.run([*command, "install", "-qq", *arguments], env=clean_environment())
    if done.returncode != 0:
        stop(
            "pip could not install what is needed; its own words are above. Without a network, "
            "set PIP_FIND_LINKS to a folder that holds the wheels named in .constraints.txt."
        )


def stamp(*files: Path) -> str:
    """What an installation rests on, in one figure."""
    summed = hashlib.sha256(f"{sys.version} {ROOT}".encode())
    for file in files:
        summed.update(file.read_bytes())
    return summed.hexdigest()


def read_stamps() -> dict[str, str]:
    """What was installed before; nothing where that cannot be read."""
    try:
        found = json.loads(STAMPS.read_text(encoding="utf-8"))
    except (OSError, ValueError):
        return {}
    return found if isinstance(found, dict) else {}


def install(parts: list[str]) -> None:
    """Bring `.venv` to the pinned versions, doing only what has changed."""
    if not sound_venv():
        make_venv()
    done = read_stamps() | {"place": str(VENV)}
    for part in parts:
        if done.get(part) != stamp(PINS[part]):
            say(f"installing the packages pinned in {PINS[part].name} (once; it takes a minute)")
            pip("--require-hashes", "--only-binary", ":all:", "-r", str(PINS[part]))
            done[part] = stamp(PINS[part])
            STAMPS.write_text(json.dumps(done), encoding="utf-8")
    project = stamp(ROOT / "pyproject.toml")
    if done.get("project") != project:
        pip("--no-deps", "--no-build-isolation", "--no-index", "--editable", str(ROOT))
        done["project"] = project
        STAMPS.write_text(json.dumps(done), encoding="utf-8")
    # Compiled here because a start must not pay for it where PYTHONDONTWRITEBYTECODE is set.
    compiling = [str(venv_python()), "-m", "compileall", "-q", str(ROOT / "chargebench")]
    subprocess.run(compiling, env=clean_environment(), stdout=subprocess.DEVNULL)


# The two commands


def run(words: list[str]) -> int:
    """Set up and start the program on the sample shop."""
    provide_system_packages({})
    install(["run"])
    say("starting the sample shop")
    command = [str(venv_python()), "-m", "chargebench", "sample", *words]
    return subprocess.run(command, env=clean_environment()).returncode


def test(words: list[str]) -> int:
    """Set up and run the suite; pytest has the last word."""
    office = "--office" in words or os.environ.get("CI") == "true"
    screen = "--screen" in words
    words = [word for word in words if word not in ("--office", "--screen")]
    provide_system_packages({**TEST_PROGRAMS, **(OFFICE if office else {})})
    install(["run", "test"])
    environment = clean_environment()
    command = [str(venv_python()), "-m", "pytest", *(words or ["--numprocesses", "auto"])]
    if screen:
        environment |= {"CHARGEBENCH_REAL_WINDOW": "1", "QT_QPA_PLATFORM": "xcb"}
        command = ["xvfb-run", "--auto-servernum", "--server-args=-screen 0 1600x1000x24", *command]
        if not (shutil.which("xvfb-run") and shutil.which("xauth")):
            stop("--screen needs the programs xvfb-run and xauth (Debian: xvfb xauth)")
    if sys.platform.startswith("linux") and shutil.which("soffice") is None:
        say("LibreOffice is not here, so its test will NOT be run; --office installs it on Debian")
    say("running the tests" + (" on a virtual X screen" if screen else ""))
    return subprocess.run(command, env=environment, cwd=ROOT).returncode


def main(words: list[str]) -> int:
    """Choose the command."""
    commands = {"run": run, "test": test}
    if not words or words[0] not in commands:
        print(USAGE)
        return 0 if words and words[0] in ("-h", "--help", "help") else 2
    try:
        return commands[words[0]](words[1:])
    except KeyboardInterrupt:
        return 130


if __name__ == "__main__":
    sys.exit(main(sys.argv[1:]))
