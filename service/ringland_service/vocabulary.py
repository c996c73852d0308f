"""The closed vocabulary of units: which symbols each kind of quantity accepts.

A symbol is what stands on the wire; beside it the spelling that pint knows. pint never sees text
from outside: it gives each unit's factor once, at start. A symbol may mean different things under
different kinds (``kPa`` gauge or absolute, ``degC`` temperature or difference); the field's kind
decides. Bare words that shops use for two things ("tenth", "oz") are refused, with what would be
right.
"""

# kind -> symbol -> pint spelling. The first symbol of a kind is its canonical unit.
UNITS: dict[str, dict[str, str]] = {
    "length": {
        "mm": "millimeter",
        "um": "micrometer",
        "cm": "centimeter",
        "in": "inch",
        "thou": "inch / 1000",
    },
    "altitude": {"m": "meter", "km": "kilometer", "ft": "foot"},
    "area": {"mm2": "millimeter ** 2", "cm2": "centimeter ** 2", "in2": "inch ** 2"},
    "volume": {
        "cc": "centimeter ** 3",
        "cm3": "centimeter ** 3",
        "mL": "milliliter",
        "L": "liter",
        "in3": "inch ** 3",
    },
    "liquid": {
        "mL": "milliliter",
        "cc": "centimeter ** 3",
        "L": "liter",
        "floz_us": "US_fluid_ounce",
        "floz_imp": "imperial_fluid_ounce",
    },
    "fuel": {
        "L": "liter",
        "mL": "milliliter",
        "gal_us": "US_liquid_gallon",
        "gal_imp": "imperial_gallon",
    },
    "pressure_gauge": {
        "kPa": "kilopascal",
        "bar": "bar",
        "MPa": "megapascal",
        "psi": "psi",
        "kgf/cm2": "kilogram_force / centimeter ** 2",
        "kPa(g)": "kilopascal",
        "bar(g)": "bar",
        "psig": "psi",
    },
    "pressure_absolute": {
        "kPa": "kilopascal",
        "hPa": "hectopascal",
        "mbar": "millibar",
        "bar": "bar",
        "psi": "psi",
        "inHg": "inch_Hg",
        "mmHg": "millimeter_Hg",
        "atm": "atm",
        "kPa(a)": "kilopascal",
        "bar(a)": "bar",
        "psia": "psi",
    },
    "pressure_difference": {
        "kPa": "kilopascal",
        "hPa": "hectopascal",
        "mbar": "millibar",
        "bar": "bar",
        "MPa": "megapascal",
        "psi": "psi",
        "kgf/cm2": "kilogram_force / centimeter ** 2",
    },
    "stress": {
        "MPa": "megapascal",
        "N/mm2": "newton / millimeter ** 2",
        "GPa": "gigapascal",
        "kgf/mm2": "kilogram_force / millimeter ** 2",
        "psi": "psi",
    },
    "torque": {
        "N.m": "newton * meter",
        "kgf.m": "kilogram_force * meter",
        "kgf.cm": "kilogram_force * centimeter",
        "lbf.ft": "pound_force * foot",
        "lbf.in": "pound_force * inch",
    },
    "force": {"N": "newton", "kN": "kilonewton", "kgf": "kilogram_force", "lbf": "pound_force"},
    "temperature": {"degC": "degree_Celsius", "degF": "degree_Fahrenheit", "K": "kelvin"},
    "temperature_difference": {
        "K": "kelvin",
        "degC": "delta_degree_Celsius",
        "degF": "delta_degree_Fahrenheit",
    },
    "mass": {"g": "gram", "kg": "kilogram", "oz": "ounce", "lb": "pound"},
    "spring_rate": {
        "N/mm": "newton / millimeter",
        "kgf/mm": "kilogram_force / millimeter",
        "lbf/in": "pound_force / inch",
    },
    # Revolutions a minute are counted, never turned into radians: pint's rpm would bring 2 pi in.
    "rotation": {"rpm": "1 / minute", "1/min": "1 / minute", "1/s": "1 / second"},
    "velocity": {"m/s": "meter / second", "m/min": "meter / minute", "ft/s": "foot / second"},
    "angle": {"deg": "degree", "rad": "radian", "turn": "turn"},
    "expansion": {
        "1/K": "1 / kelvin",
        "um/m/K": "micrometer / meter / kelvin",
        "1/degF": "1 / delta_degree_Fahrenheit",
    },
    "voltage": {"V": "volt"},
    "percent": {"%": "percent"},
}

# Other spellings of a symbol, accepted wherever the symbol is.
ALIASES: dict[str, str] = {
    "inch": "in",
    "µm": "um",
    "μm": "um",
    "mm²": "mm2",
    "N/mm²": "N/mm2",
    "cm³": "cm3",
    "ml": "mL",
    "l": "L",
    "cu in": "in3",
    "kgf/cm²": "kgf/cm2",
    "Nm": "N.m",
    "N·m": "N.m",
    "lbf·ft": "lbf.ft",
    "lbf·in": "lbf.in",
    "lb-ft": "lbf.ft",
    "ft-lb": "lbf.ft",
    "lb-in": "lbf.in",
    "in-lb": "lbf.in",
    "°C": "degC",
    "°F": "degF",
    "°": "deg",
    "1/°F": "1/degF",
    "µm/m/K": "um/m/K",
}

# Words that are refused because they mean two things, with what would be right.
AMBIGUOUS: dict[str, str] = {
    "tenth": "0.0001 in to some, 0.1 mm to others: write in or mm",
    "tenths": "0.0001 in to some, 0.1 mm to others: write in or mm",
    "mil": "0.001 in to some, 1 mm to others: write thou or mm",
    "mils": "0.001 in to some, 1 mm to others: write thou or mm",
    "th": "write thou (0.001 in) or mm",
    "oz": "a weight here; liquids in floz_us or floz_imp (4 % apart)",
    "floz": "write floz_us or floz_imp (4 % apart)",
    "fl oz": "write floz_us or floz_imp (4 % apart)",
    "gal": "write gal_us or gal_imp (20 % apart)",
    "gallon": "write gal_us or gal_imp (20 % apart)",
    "lb": "a weight; pressure in psi, torque in lbf.ft or lbf.in",
    "lbs": "a weight is lb; pressure in psi, torque in lbf.ft or lbf.in",
    "kg": "a mass; a force in kgf, a pressure in kgf/cm2",
    "MM": "capital M is mega: millimetres are mm",
    "Mm": "capital M is mega: millimetres are mm",
    "ML": "capital M is mega: millilitres are mL",
    "mpa": "milli is not mega: megapascals are MPa",
    "mPa": "milli is not mega: megapascals are MPa",
    "mb": "write mbar",
    "PS": "a power: not among the quantities here",
    '"': "write in",
    "J": "energy is not torque: write N.m",
}

# What each symbol of a marked pressure says; a field of the other kind refuses it.
OTHER_PRESSURE = {
    "pressure_gauge": ("kPa(a)", "bar(a)", "psia"),
    "pressure_absolute": ("kPa(g)", "bar(g)", "psig"),
}
