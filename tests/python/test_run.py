"""One preparation against scipy.integrate.solve_ivp (Radau, rtol 1e-10), through `overwater run --json`."""

import json

import numpy
import pytest

from preparation import Preparation, arrhenius, first_state, mixed
from program import overwater

TIMES = numpy.arange(1, 21) * 20.0
# 80 cm of 5 mm bore, beside a flask of 250 cm3.
SPACE = 250e-6 + numpy.pi / 4 * 0.005**2 * 0.8
ROOM, CATALYST = 293.15, 0.4e-3
TOLERANCE = 1e-6

RUN = """
format = 1
flask_cm3 = 250
heel_cm3 = 25
catalyst_g = 0.4
room_c = 20
pressure_kpa = 101.325
tube_bore_mm = 5
tube_length_cm = 80
outlet_depth_cm = 10
stem_length_cm = 25
heat_loss_w_per_k = 0.2
glass_j_per_k = 40
end_s = 400
every_s = 20
rtol = 1e-10
kinetics = {kinetics}
additions = [{additions}]
"""

FIRST_ORDER = "{ k_at_20 = 5e-4, activation_j_per_mol = 50000 }"
SATURATING = "{ k_at_20 = 0.3, activation_j_per_mol = 40000, half_mol_per_m3 = 200 }"


def first_order(t, c):
    return 5e-4 * arrhenius(t, 50_000) * CATALYST * c


def saturating(t, c):
    return 0.3 * arrhenius(t, 40_000) * CATALYST * c / (200 + c)


def state(point):
    """In the order of the equations, in SI units."""
    names = ["peroxide", "water", "", "oxygen", "nitrogen", "oxygen_out", "nitrogen_out", "vapour_out"]
    values = [point[f"{name}_mmol"] * 1e-3 if name else point["temperature_c"] + 273.15 for name in names]
    return numpy.array([*values, point["heat_out_j"]])


@pytest.mark.parametrize("kinetics, rate", [(FIRST_ORDER, first_order), (SATURATING, saturating)])
@pytest.mark.parametrize("over_s", [0, 100])
def test_every_state_at_twenty_times(kinetics, rate, over_s):
    """20 cm3 of 1.785 mol/dm3, poured at once or dripped over 100 s; two laws."""
    addition = f"{{ time_s = 0, over_s = {over_s}, volume_cm3 = 20, concentration_mol_per_dm3 = 1.785 }}"
    text = RUN.format(kinetics=kinetics, additions=addition)
    answer = json.loads(overwater("run", "-", "--json", text=text))
    points = answer["curve"]
    assert [point["time_s"] for point in points[1:]] == list(TIMES)

    # Still, before anything is added: the depth of 10 cm of water and a bubble of 5 mm.
    still = points[0]["back_pressure_pa"]
    assert still == pytest.approx(998.2 * 9.80665 * 0.1 + 4 * 0.0728 / 0.005, rel=1e-4)
    pressure = 101_325 + still
    flask = Preparation(SPACE, pressure, ROOM, 0.2, 40.0, rate)
    x = first_state(SPACE, pressure, 25.0, ROOM)
    assert x == pytest.approx(state(points[0]), rel=1e-8, abs=1e-12)
    poured = mixed(20.0, 1.785)
    if not over_s:
        x = flask.poured(x, *poured, ROOM)
    worst = 0.0
    for time, point in zip(TIMES, points[1:]):
        dripping = time <= over_s
        inflow = (poured[0] / over_s, poured[1] / over_s, ROOM) if dripping else ()
        x = flask.follow(x, time - 20.0, time, inflow)
        worst = max(worst, numpy.abs(state(point) / x - 1).max())
        assert state(point) == pytest.approx(x, rel=TOLERANCE), time
    print(f"greatest relative difference {worst:.1e}")


def test_pressure_of_the_stem_and_shrinkage():
    """The rise in the stem is the back pressure over that of a centimetre of water, 97.9 Pa at 20 degC."""
    addition = "{ time_s = 0, volume_cm3 = 20, concentration_mol_per_dm3 = 1.785 }"
    answer = json.loads(overwater("run", "-", "--json", text=RUN.format(kinetics=FIRST_ORDER, additions=addition)))
    for point in answer["curve"]:
        assert point["back_pressure_pa"] == pytest.approx(97.89 * point["stem_rise_cm"], rel=1e-4)
