"""A window on a shop that is kept on a server."""

import psycopg
from pytestqt.qtbot import QtBot

from chargebench.desk import Desk
from chargebench.ui.window import MainWindow
from tests.postgres.server import Site

SHOP = {"name": "Larkmoor Cold", "units": "SI", "rule_set": "generic"}
PERSON = {"name": "N. Okafor", "role": "shop"}


def test_that_the_window_shows_what_another_bench_recorded_and_says_when_the_server_is_gone(
    site: Site, qtbot: QtBot
) -> None:
    window = MainWindow()
    qtbot.addWidget(window)
    with Desk.create(site.address(), SHOP, PERSON) as desk, Desk.open(site.bench("C")) as other:
        window.open_desk(desk)
        window.show()
        window._lookout.look()
        other.person = desk.person
        other.save_row("site", "S-1", {"name": "Pier", "address": "Quay 1"})
        with qtbot.waitSignal(window.notifier.changed):
            window._lookout.look()
        assert desk.answers("site", "S-1").text("name") == "Pier"
        told: list[str] = []
        window._lookout.gone.connect(told.append)
        with psycopg.connect(site.admin, autocommit=True) as admin:
            admin.execute(f"ALTER DATABASE {site.database} ALLOW_CONNECTIONS false")
            admin.execute(
                "SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = %s",
                (site.database,),
            )
            window._lookout.look()
            window._lookout.look()
            assert len(told) == 1
            assert site.database in told[0]
            admin.execute(f"ALTER DATABASE {site.database} ALLOW_CONNECTIONS true")
        window._lookout.look()
        assert not desk.server_gone
        window.close()  # no longer looks at a shop that is closed
        assert not window._lookout.isActive()
