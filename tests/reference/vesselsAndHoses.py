"""Makes vesselsAndHoses.json: python -m venv v && v/bin/pip install CoolProp==8.0.0 fluids==1.3.1 && v/bin/python this.py

CoolProp: Schmidt & Wagner 1985 for oxygen, Span et al. 2000 for nitrogen, Lemmon & Jacobsen 2004 for viscosity.
fluids: Colebrook and White's equation solved exactly. Areas are integrated in small strips.
"""

import json
from math import pi, sqrt
from pathlib import Path

import CoolProp.CoolProp as cp
import fluids

O, N = "Oxygen", "Nitrogen"
ATM = 101325.0
PSI = 6894.757293168
ROOM = 294.25
P = cp.PropsSI
REFERENCE = P("D", "T", ROOM, "P", ATM, O)
EOS = "Schmidt & Wagner 1985 by CoolProp 8.0.0"


def bar(gauge):
    return gauge * 1e5 + ATM


def boiled(fluid):
    heat = P("H", "P", ATM, "Q", 1, fluid) - P("H", "P", ATM, "Q", 0, fluid)
    return P("D", "P", ATM, "Q", 0, fluid) * heat


def drawn(gauge):
    return (P("D", "P", bar(gauge), "Q", 0, O) - P("D", "P", bar(gauge), "Q", 1, O)) / REFERENCE


def duty(flow, celsius, gauge):
    rise = P("H", "T", celsius + 273.15, "P", bar(gauge), O) - P("H", "P", bar(gauge), "Q", 0, O)
    return flow / 60000 * REFERENCE * rise / 1000


def head(mbar, height, volume, lying, gauge):
    difference = P("D", "P", bar(gauge), "Q", 0, O) - P("D", "P", bar(gauge), "Q", 1, O)
    share = mbar * 100 / difference / 9.80665 / height
    if lying:
        strips = 200000
        y = [(i + 0.5) / strips * share for i in range(strips)]
        share = sum(2 * sqrt(each * (1 - each)) for each in y) * share / strips / (pi / 4)
    return volume * share


def hose(flow, length, bore, gauge, roughness):
    inlet = bar(gauge)
    density, viscosity = (P(what, "T", ROOM, "P", inlet, O) for what in "DV")
    diameter = bore / 1000
    speed = flow / 60000 * REFERENCE / density / (pi * diameter**2 / 4)
    reynolds = density * speed * diameter / viscosity
    factor = 64 / reynolds if reynolds < 2300 else fluids.friction.Colebrook(reynolds, roughness / bore)
    x = factor * length / diameter * density * speed**2 / 2 / inlet
    return inlet / 1e5 * (1 - sqrt(1 - 2 * x)), reynolds


rows = []


def row(id, inputs, expected, unit, relative, source):
    tolerance = float(f"{abs(expected) * relative:.2g}")
    rows.append(
        dict(id=id, inputs=inputs, expected=float(f"{expected:.8g}"), unit=unit, tolerance=tolerance, source=source, provenance="computed")
    )


row("nitrogen-heat", {}, boiled(N) / boiled(O), "ratio of heat to boil a litre at 1 atm", 1e-4, f"Span et al. 2000 over {EOS}")
row(
    "nitrogen-distance",
    {"ambient_K": 300},
    (300 - P("T", "P", ATM, "Q", 0, O)) / (300 - P("T", "P", ATM, "Q", 0, N)),
    "ratio of distances from 300 K",
    1e-4,
    f"Span et al. 2000 over {EOS}",
)
for gauge in (0, 1.4, 3):
    row(f"drawn-{gauge}bar", {"gauge": gauge}, drawn(gauge), "L gas a litre of level", 5e-6, EOS)
for flow, celsius, gauge in ((100, 21.1, 0), (100, 21.1, 10), (60, -20, 4), (15, 5, 1.5)):
    row(
        f"duty-{flow}-{celsius}C-{gauge}bar",
        {"flow": flow, "celsius": celsius, "gauge": gauge},
        duty(flow, celsius, gauge),
        "kW",
        2e-5,
        EOS,
    )
for mbar, height, volume, lying, gauge in (
    (80, 1.4, 350, False, 0),
    (80, 1.4, 350, False, 3),
    (60, 1.1, 900, True, 1.5),
    (10, 1.1, 900, True, 1.5),
    (20 * 2.490889, 1.2, 500, True, 0),
):
    row(
        f"head-{mbar:.4g}mbar-{volume}L-{gauge}bar",
        {"mbar": mbar, "height": height, "volume": volume, "lying": lying, "gauge": gauge},
        head(mbar, height, volume, lying, gauge),
        "L",
        2e-5,
        EOS,
    )
for kelvin, absolute in ((233.15, 1.01325), (294.25, 1.01325), (294.25, 5.01325), (300, 100), (333.15, 301.325)):
    row(
        f"viscosity-{kelvin}K-{absolute}bar",
        {"kelvin": kelvin, "bar": absolute},
        P("V", "T", kelvin, "P", absolute * 1e5, O) * 1e6,
        "µPa·s",
        1e-6,
        "Lemmon & Jacobsen 2004 by CoolProp 8.0.0",
    )
for flow, length, bore, gauge, roughness in (
    (10, 5, 6, 4, 0.0015),
    (9.9, 10, 6, 4, 0.0015),
    (10.5, 10, 6, 4, 0.0015),
    (60, 15, 6, 4, 0.0015),
    (60, 15, 6.35, 3.5, 0.0015),
    (600, 30, 15, 4, 0.05),
    (5, 10, 5, 0, 0),
    (30, 5, 4, 2, 0.01),
    (40, 5, 2.5, 150, 0),
    (2000, 200, 40, 9, 0.0015),
):
    drop, reynolds = hose(flow, length, bore, gauge, roughness)
    row(
        f"hose-{flow}-{length}m-{bore}mm-{gauge}bar-{roughness}mm",
        {"flow": flow, "length": length, "bore": bore, "gauge": gauge, "roughness": roughness},
        drop,
        "bar",
        1e-2 if reynolds < 2300 else 5e-3,
        f"Darcy and Weisbach, Re {reynolds:.0f}, friction factor by fluids 1.3.1, properties by CoolProp 8.0.0",
    )

text = "[\n" + ",\n".join("  " + json.dumps(each, ensure_ascii=False) for each in rows) + "\n]\n"
Path(__file__).with_suffix(".json").write_text(text, encoding="utf-8")
