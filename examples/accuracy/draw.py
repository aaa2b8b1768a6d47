"""Draws how far each property is from its reference, and writes the page that says so.

    python examples/accuracy/draw.py [FOLDER]

Run with the packages of tests/python/requirements.txt and the program built for release. The tests draw the page anew and
compare.
"""

import pathlib
import re
import sys

HERE = pathlib.Path(__file__).resolve().parent
sys.path.insert(0, str(HERE.parents[1] / "tests" / "python"))

import CoolProp.CoolProp as coolprop  # noqa: E402
import matplotlib  # noqa: E402
import numpy  # noqa: E402
from program import ask, formula, overwater, published  # noqa: E402

matplotlib.use("svg")
import matplotlib.pyplot as pyplot  # noqa: E402

matplotlib.rcParams.update(
    {
        "svg.hashsalt": "overwater",
        "svg.fonttype": "none",
        "font.family": "sans-serif",
        "font.size": 10,
        "axes.spines.top": False,
        "axes.spines.right": False,
    }
)

ZERO = 273.15
# Lines are told apart by their strokes and by the words at their ends, never by colour.
STROKES = ["-", "--", "-.", ":", (0, (1, 1)), (0, (5, 1)), (0, (3, 1, 1, 1)), (0, (8, 2)), (0, (1, 3))]


def water(output, celsius, *state):
    return numpy.array([coolprop.PropsSI(output, "T", t + ZERO, *state, "Water") for t in celsius])


def per_cent(ours, theirs):
    return 100 * (ours / theirs - 1)


class Property:
    """One property: what it is held against, and the difference along a range."""

    def __init__(self, name, title, equation, reference, unit="%", along="temperature / °C", goal=None):
        self.name, self.title, self.equation, self.reference = name, title, equation, reference
        self.unit, self.along, self.goal = unit, along, goal
        self.lines = []

    def line(self, label, places, differences):
        kept = ~numpy.isnan(differences)
        assert kept.sum() >= 3, f"{self.name}, {label}: nothing to draw"
        self.lines.append((label, places[kept], differences[kept]))
        return self

    def worst(self):
        found = []
        for label, places, differences in self.lines:
            at = numpy.argmax(numpy.abs(differences))
            found.append((label, differences[at], places[at], len(places)))
        return found

    def finding(self):
        said = [f"{label}: {difference:+.2g} {self.unit} at {place:.3g}" for label, difference, place, _ in self.worst()]
        return f"Worst difference along {self.along.split(' / ')[0]}. " + "; ".join(said) + "."

    def draw(self, folder):
        figure, axes = pyplot.subplots(figsize=(7.2, 3.4), layout="constrained")
        for (label, places, differences), stroke in zip(self.lines, STROKES * 3):
            style = {"linestyle": stroke} if len(places) > 25 else {"linestyle": "none", "marker": "o", "markersize": 3.5}
            axes.plot(places, differences, color="black", linewidth=1.1, label=label, **style)
        if self.goal:
            for limit in (-self.goal, self.goal):
                axes.axhline(limit, color="black", linewidth=0.6, linestyle=(0, (2, 4)))
        axes.axhline(0, color="black", linewidth=0.5)
        axes.set_xlabel(self.along)
        axes.set_ylabel(f"difference / {self.unit}")
        if len(self.lines) > 1:
            axes.legend(loc="center left", bbox_to_anchor=(1.01, 0.5), frameon=False, fontsize=8.5, handlelength=3.2)
        path = folder / f"{self.name}.svg"
        figure.savefig(path, metadata={"Date": None, "Creator": None}, transparent=True)
        pyplot.close(figure)
        path.write_text(readable(path.read_text(), self.title, self.finding()))


def readable(svg, title, finding):
    """The drawing in the colours of the reader, with a title and what it shows in words."""
    start = svg.index("<svg")
    head, rest = svg[start:].split(">", 1)
    escaped = [text.replace("&", "&amp;").replace("<", "&lt;") for text in (title, finding)]
    words = f'\n <title id="t">{escaped[0]}</title>\n <desc id="d">{escaped[1]}</desc>'
    style = "\n <style>svg{color:#111}@media (prefers-color-scheme:dark){svg{color:#eee}}text{fill:currentColor}</style>"
    rest = re.sub(r"#000000|(?<=: )black", "currentColor", rest)
    # Glyphs of tick marks and such have no fill of their own: they take the reader's colour too.
    rest = rest.replace("<g id=\"figure_1\">", '<g id="figure_1" fill="currentColor">', 1)
    rest = re.sub(r"[ \t]+\n", "\n", rest)
    return f'{head} role="img" aria-labelledby="t d">{words}{style}{rest}'


def properties():
    celsius = numpy.linspace(0.01, 99.97, 101)
    everyday = numpy.linspace(0.5, 99.5, 100)

    iapws95 = water("P", celsius, "Q", 0) / 1000
    yield Property(
        "vapour_pressure", "Vapour pressure of water", "IAPWS SR1-86(1992), equation 1, 0 to 100 °C",
        "IAPWS-95 in CoolProp 8.0.0", goal=0.02,
    ).line("default", celsius, per_cent(formula("vapour_pressure", temperature_c=celsius), iapws95))

    simple = Property(
        "vapour_pressure_sources", "Other equations and tables of the vapour pressure", "each over its own range",
        "IAPWS-95 in CoolProp 8.0.0",
    )
    for name, label in [
        ("vapour_pressure_hyland_wexler_1983", "Hyland and Wexler 1983"),
        ("vapour_pressure_cipm_2007", "CIPM-2007"),
        ("vapour_pressure_buck_1981", "Buck 1981"),
        ("vapour_pressure_buck_1996", "Buck 1996"),
        ("vapour_pressure_magnus_wmo", "Magnus (WMO), to 60 °C"),
        ("vapour_pressure_antoine", "Antoine"),
    ]:
        ours = formula(name, temperature_c=celsius)
        if "magnus" in name:
            ours[celsius > 60] = numpy.nan
        simple.line(label, celsius, per_cent(ours, iapws95))
    whole = numpy.arange(1.0, 100.0)
    at_whole = water("P", whole, "Q", 0) / 1000
    for name, label in [
        ("vapour_pressure_crc_1992", "CRC table 1992"),
    ]:
        simple.line(label, whole, per_cent(formula(name, temperature_c=whole), at_whole))
    yield simple

    back = numpy.array([coolprop.PropsSI("T", "P", p * 1000, "Q", 0, "Water") - ZERO for p in iapws95])
    yield Property(
        "saturation_temperature", "Temperature of a vapour pressure", "IAPWS SR1-86(1992), equation 1, solved for temperature",
        "IAPWS-95 in CoolProp 8.0.0", unit="K",
    ).line("default", celsius, formula("saturation_temperature", vapour_pressure_kpa=iapws95) - back)

    density = water("D", everyday, "P", 101325)
    liquid = Property(
        "water_density", "Density of liquid water at 1 atm", "IAPWS SR6-08(2011), equation 4; Kell 1975; Tanaka 2001",
        "IAPWS-95 in CoolProp 8.0.0",
    )
    liquid.line("default (IAPWS SR6-08)", everyday, per_cent(formula("water_density", temperature_c=everyday) * 1000, density))
    liquid.line("Kell 1975", everyday, per_cent(formula("water_density_kell_1975", temperature_c=everyday) * 1000, density))
    tanaka = formula("water_density_tanaka", temperature_c=everyday, pressure_kpa=101.325) * 1000
    liquid.line("Tanaka 2001, to 40 °C", everyday, per_cent(tanaka, density))
    yield liquid

    cool = numpy.linspace(1.0, 49.0, 49)
    real = numpy.array([coolprop.HAProps_Aux("f", t + ZERO, 101325.0, 0.0)[0] for t in cool])
    enhancement = Property(
        "enhancement_factor", "Enhancement of the vapour pressure in air at 1 atm",
        "Greenspan 1976 (default), Hardy 1998, Buck 1996, CIPM-2007", "humid air of CoolProp 8.0.0 (Hyland and Wexler 1983)",
    )
    for name, label in [
        ("enhancement_factor_greenspan_1976", "default (Greenspan 1976)"),
        ("enhancement_factor_hardy_1998", "Hardy 1998"),
        ("enhancement_factor_buck_1996", "Buck 1996"),
        ("enhancement_factor_cipm_2007", "CIPM-2007, 5 to 30 °C"),
    ]:
        enhancement.line(label, cool, per_cent(formula(name, temperature_c=cool, pressure_kpa=101.325), real))
    yield enhancement

    groups = [
        ("molar_volume_air_gases", "Molar volumes at 100 kPa: gases of the air, hydrogen and carbon dioxide", [
            ("oxygen", "Oxygen"), ("nitrogen", "Nitrogen"), ("air", "Air"), ("argon", "Argon"), ("helium", "Helium"),
            ("hydrogen", "Hydrogen"), ("carbon_dioxide", "CarbonDioxide"),
        ]),
        ("molar_volume_fuels", "Molar volumes at 100 kPa: fuels", [
            ("methane", "Methane"), ("ethane", "Ethane"), ("ethene", "Ethylene"), ("propane", "n-Propane"),
            ("butane", "n-Butane"), ("carbon_monoxide", "CarbonMonoxide"),
        ]),
        ("molar_volume_other_gases", "Molar volumes at 100 kPa: other gases of the laboratory", [
            ("dinitrogen_oxide", "NitrousOxide"), ("sulfur_dioxide", "SulfurDioxide"), ("ammonia", "Ammonia"),
            ("chlorine", "Chlorine"), ("hydrogen_sulfide", "HydrogenSulfide"), ("hydrogen_chloride", "HydrogenChloride"),
        ]),
    ]
    warm = numpy.linspace(5.0, 99.5, 64)
    for name, title, gases in groups:
        volumes = Property(
            name, title, "virial equation, cut behind the second coefficient; coefficients fitted to the reference equations",
            "reference equations of state in CoolProp 8.0.0",
        )
        for ours, theirs in gases:
            real = numpy.array([1000 / coolprop.PropsSI("Dmolar", "T|gas", t + ZERO, "P", 1e5, theirs) for t in warm])
            mine = formula(f"real_molar_volume_{ours}", temperature_c=warm, pressure_kpa=100.0)
            volumes.line(ours.replace("_", " "), warm, per_cent(mine, real))
        yield volumes

    rows = [row for row in published("oxygen_in_water.csv") if float(row["temperature_c"]) <= 40]
    places = numpy.array([float(row["temperature_c"]) for row in rows])
    solubility = Property(
        "oxygen_saturation", "Oxygen dissolved under moist air of 1 atm", "Benson and Krause 1984, 0 to 40 °C",
        "Benson and Krause 1980, 1984, worked out by a second program; Standard Methods 4500-O, from memory", goal=0.3,
    )
    ours = formula("oxygen_saturation", temperature_c=places, pressure_kpa=101.325, salinity=0.0)
    for column, label in [("saturation", "Benson and Krause"), ("standard_methods", "Standard Methods")]:
        theirs = numpy.array([float(row[column] or "nan") for row in rows])
        solubility.line(label, places, per_cent(ours, theirs))
    yield solubility

    rows = [row for row in published("oxygen_in_water.csv") if row["henry_2004"] and 1 <= float(row["temperature_c"]) <= 40]
    places = numpy.array([float(row["temperature_c"]) for row in rows])
    henry = Property(
        "henry_oxygen", "Henry constant of oxygen", "Benson, Krause and Peterson 1979 (default), 0 to 60 °C",
        "the same worked out by a second program, and IAPWS G7-04 (2004)",
    )
    ours = formula("henry_constant_oxygen", temperature_c=places)
    for column, label in [("henry_1979", "Benson and others 1979"), ("henry_2004", "IAPWS G7-04")]:
        henry.line(label, places, per_cent(ours, numpy.array([float(row[column]) for row in rows])))
    yield henry

    rows = [row for row in published("peroxide_density.csv") if row["tables_18_c"] and float(row["percent_w_w"]) >= 0.02]
    places = numpy.array([float(row["percent_w_w"]) for row in rows])
    peroxide = Property(
        "peroxide_density", "Density of hydrogen peroxide solutions at 18 °C", "Laliberté 2009, 0 to 40 % w/w",
        "International Critical Tables III (1928), from memory", along="hydrogen peroxide / % w/w",
    )
    ours = formula("peroxide_density", percent_w_w=places, temperature_c=18.0)
    yield peroxide.line("default", places, per_cent(ours, numpy.array([float(row["tables_18_c"]) for row in rows])))

    rows = [row for row in published("water_ionisation.csv") if row["pkw_2007"]]
    places = numpy.array([float(row["temperature_c"]) for row in rows])
    ionisation = Property(
        "ionisation", "Ionisation of water (pKw)", "IAPWS R11-24 (2024), 0 to 100 °C",
        "the release of 2007 as in iapws 1.5.5, and a textbook's table (OpenStax, Chemistry 2e)", unit="1",
    )
    ours = formula("pkw", temperature_c=places)
    for column, label in [("pkw_2007", "IAPWS 2007"), ("textbook", "textbook")]:
        ionisation.line(label, places, ours - numpy.array([float(row[column] or "nan") for row in rows]))
    yield ionisation


def disagreements():
    """Where published sources differ: what, the default first, the other, and by how much."""

    def at(name, **inputs):
        return formula(name, **{key: numpy.array([value]) for key, value in inputs.items()})[0]

    def row(what, default, other, digits=5):
        (name, value), (other_name, other_value) = default, other
        return (what, f"{value:.{digits}g} ({name})", f"{other_value:.{digits}g} ({other_name})",
                f"{100 * (other_value / value - 1):+.2g} %")

    vapour = ("IAPWS 1992", at("vapour_pressure", temperature_c=25.0))
    for name, label in [
        ("vapour_pressure_crc_1992", "CRC table, 73rd edition 1992, temperatures on IPTS-68"),
        ("vapour_pressure_openstax_2019", "OpenStax 2019, table in torr"),
        ("vapour_pressure_hyland_wexler_1983", "Hyland and Wexler 1983"),
        ("vapour_pressure_cipm_2007", "CIPM-2007"),
        ("vapour_pressure_buck_1981", "Buck 1981"),
        ("vapour_pressure_buck_1996", "Buck 1996"),
        ("vapour_pressure_magnus_wmo", "Magnus, WMO"),
        ("vapour_pressure_antoine", "Antoine"),
    ]:
        yield row("vapour pressure of water at 25 °C / kPa", vapour, (label, at(name, temperature_c=25.0)))
    density = ("IAPWS SR6-08", at("water_density", temperature_c=25.0))
    yield row("density of water at 25 °C / (g/cm³)", density, ("Kell 1975", at("water_density_kell_1975", temperature_c=25.0)), 8)
    yield row("density of water at 25 °C / (g/cm³)", density,
              ("Tanaka 2001, free of air", at("water_density_tanaka", temperature_c=25.0, pressure_kpa=101.325)), 8)
    yield row("density of water at 25 °C / (g/cm³)", density,
              ("Tanaka 2001, saturated with air", at("water_density_tanaka_air_saturated", temperature_c=25.0, pressure_kpa=101.325)), 8)
    state = {"temperature_c": 25.0, "pressure_kpa": 101.325}
    enhancement = ("Greenspan 1976", at("enhancement_factor_greenspan_1976", **state))
    for name, label in [("hardy_1998", "Hardy 1998"), ("buck_1996", "Buck 1996"), ("cipm_2007", "CIPM-2007")]:
        yield row("enhancement factor at 25 °C, 1 atm", enhancement, (label, at(f"enhancement_factor_{name}", **state)), 6)
    yield row("humidity over saturated brine at 25 °C / %", ("CRC Handbook", at("brine_humidity", temperature_c=25.0)),
              ("Greenspan 1977", at("brine_humidity_greenspan_1977", temperature_c=25.0)))
    yield row("gravity at sea level, 52° / (m/s²)", ("WGS 84", at("gravity", latitude_deg=52.0, altitude_m=0.0)),
              ("formula of 1980", at("gravity_1980", latitude_deg=52.0)), 7)
    yield row("pressure at 200 m, 101.325 kPa at sea level, 15 °C outside / kPa",
              ("ISO 2533", at("station_pressure", sea_level_pressure_kpa=101.325, altitude_m=200.0)),
              ("WMO, dry air of 15 °C", at("low_level_station_pressure", sea_level_pressure_kpa=101.325, altitude_m=200.0,
                                           air_temperature_c=15.0, air_vapour_pressure_kpa=0.0)), 6)
    yield row("760 mm of mercury / kPa", ("conventional", at("conventional_mm_of_mercury", column_mm=760.0)),
              ("760 torr", at("torr", column_mm=760.0)), 9)
    for name, volume in [("0 °C, 100 kPa", 22.711), ("24.0 dm³", 24.0), ("25 °C, 1 atm", 24.465), ("25 °C, 100 kPa", 24.790)]:
        first = at("peroxide_concentration", volume_strength_vol=20.0, molar_volume_dm3_per_mol=22.414)
        second = at("peroxide_concentration", volume_strength_vol=20.0, molar_volume_dm3_per_mol=volume)
        yield row("20 vol peroxide / (mol/dm³)", ("0 °C, 1 atm", first), (name, second), 4)
    heats = {entry["id"]: entry["value"] for entry in ask("sources", "decomposition_heat")["entries"]}
    yield row("heat of decomposition of peroxide / (kJ/mol)", ("in solution, NBS 1982", heats["decomposition_heat_1982"]),
              ("pure liquid, NASA Glenn 2002", heats["decomposition_heat_liquid"]))
    for entry in published("oxygen_in_water.csv"):
        if entry["temperature_c"] == "25":
            yield row("Henry constant of oxygen at 25 °C / (mol/(m³ Pa))",
                      ("Benson and others 1979", at("henry_constant_oxygen", temperature_c=25.0)),
                      ("IAPWS G7-04", float(entry["henry_2004"])))
    for entry in published("water_ionisation.csv"):
        if entry["temperature_c"] == "25":
            for column, label in [("pkw_2007", "IAPWS 2007"), ("textbook", "OpenStax 2019")]:
                yield row("pKw at 25 °C", ("IAPWS 2024", at("pkw", temperature_c=25.0)), (label, float(entry[column])), 6)
    gases = {"O2": "oxygen", "N2": "nitrogen", "H2": "hydrogen", "CO2": "carbon_dioxide"}
    for entry in published("second_virial_reference_equations.csv"):
        if entry["gas"] in gases and entry["temperature_k"] == "298.15":
            yield row(f"second virial coefficient of {entry['gas']} at 25 °C / (cm³/mol)",
                      ("reference equation", at(f"second_virial_{gases[entry['gas']]}", temperature_c=25.0)),
                      ("CRC Handbook polynomial", float(entry["handbook_cm3_per_mol"])), 4)


def table(header, rows):
    lines = ["| " + " | ".join(header) + " |", "|" + "---|" * len(header)]
    lines += ["| " + " | ".join(str(cell).replace("|", "\\|") for cell in row) + " |" for row in rows]
    return "\n".join(lines)


def main(folder):
    folder.mkdir(parents=True, exist_ok=True)
    parts = [
        "# How far each property is from its reference",
        "Written by `draw.py` beside it; the tests write it anew and compare. Every curve is the library's figure less the\n"
        "reference, over the range where both are there. A dotted pair of lines is the goal set for the library.",
    ]
    summary, sections = [], []
    for one in properties():
        one.draw(folder)
        for label, difference, place, points in one.worst():
            name = one.title if len(one.lines) == 1 else f"{one.title}: {label}"
            summary.append((name, f"{difference:+.2g} {one.unit}".replace(" 1", ""), f"{place:.3g}", points))
        sections.append(
            f"## {one.title}\n\n{one.equation}; held against {one.reference}.\n\n![{one.title}. {one.finding()}]({one.name}.svg)"
        )
    parts.append("## The worst of each\n\n" + table(["property", "worst difference", "at (along the drawing)", "points"], summary))
    parts += sections
    parts.append(
        "## Where published sources disagree\n\nThe default stands first; the others can be chosen by name where they are in the"
        " library.\n\n" + table(["quantity", "default", "other", "other against default"], disagreements())
    )
    limits = ask("bounds")["bounds"]
    parts.append(
        "## What is accepted\n\nThe bounds table, as `overwater bounds` prints it. Ranges of published equations are rounded"
        " inwards.\n\n"
        + table(
            ["name", "quantity", "least", "greatest", "unit", "why"],
            [(f"`{row['name']}`", row["quantity"], row["least"], row["greatest"], row["unit"], row["why"]) for row in limits],
        )
    )
    (folder / "README.md").write_text("\n\n".join(parts) + "\n")


if __name__ == "__main__":
    main(pathlib.Path(sys.argv[1]) if len(sys.argv) > 1 else HERE)
