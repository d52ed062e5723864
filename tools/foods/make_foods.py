#!/usr/bin/env python3
"""Makes data/foods/foods.tsv: our foods in kitchen words, each with figures whose source row it cites.

  make_foods.py WORDS SR28 HOUSEHOLD CIQUAL OUT

WORDS      tools/foods/kitchen-words.txt (ours)
SR28       tab-separated composition of USDA SR28, one row a food
HOUSEHOLD  tab-separated household weights of USDA SR28
CIQUAL     tab-separated Ciqual table 2020 of ANSES
Python 3 standard library only. Prints every row whose parts do not sum to 100 g and that gives no reason, and fails.
"""
import re
import sys

ML = {"cup": 236.5882365, "tbsp": 14.78676478125, "tsp": 4.92892159375, "fl oz": 29.5735295625}
PARTS = ["water", "protein", "fat", "sat", "carbohydrate", "sugars", "sucrose", "glucose", "fructose", "lactose", "maltose",
         "starch", "fibre", "polyols", "alcohol", "acid", "ash", "sodium", "potassium", "calcium", "iron", "vitc"]
STATES = ["packed", "unpacked", "sifted", "unsifted", "chopped", "grated", "ground", "sliced", "shredded", "whipped", "crumbled", "diced", "mashed", "whole", "halves", "slivered"]
COUNTS = ["small", "medium", "large", "extra large", "clove", "stalk", "sprig", "leaf", "slice", "stick", "head", "bulb", "ear", "spear", "fruit"]


def table(path):
    with open(path, encoding="utf-8") as f:
        head = f.readline().rstrip("\n").split("\t")
        return [dict(zip(head, line.rstrip("\n").split("\t"))) for line in f]


def number(cell):
    """A figure, None when not held; "<x" reads as x/2, traces as 0 (as the source's own note says)."""
    if cell in ("", None, "-"):
        return None
    if cell == "tr":
        return 0.0
    if cell.startswith("<"):
        return float(cell[1:]) / 2
    return float(cell)


def from_sr28(r):
    g = lambda k: number(r[k])
    fibre = g("fibre_g")
    sugars, starch = g("sugars_g"), g("starch_g")
    diff = g("carb_diff_g")
    available = None if diff is None else diff - (fibre or 0)
    if available is not None:
        available = max(available, (sugars or 0) + (starch or 0), 0)
    p = dict(water=g("water_g"), protein=g("protein_g"), fat=g("fat_g"), sat=g("sat_g"), carbohydrate=available, sugars=sugars,
             sucrose=g("sucrose_g"), glucose=g("glucose_g"), fructose=g("fructose_g"), lactose=g("lactose_g"), maltose=g("maltose_g"),
             starch=starch, fibre=fibre, alcohol=g("alcohol_g"), ash=g("ash_g"), sodium=g("sodium_mg"),
             potassium=g("potassium_mg"), calcium=g("calcium_mg"), iron=g("iron_mg"), vitc=g("vit_c_mg"))
    # Where only the total of a milk's sugars is held, it is lactose.
    if r["group"].startswith("Dairy") and sugars is not None and p["lactose"] is None and "weet" not in r["description"]:
        p["lactose"] = sugars
    return p, g("n_factor")


def from_ciqual(r):
    g = lambda k: number(r[k])
    p = dict(water=g("water_g"), protein=g("protein_jones_g"), fat=g("fat_g"), sat=g("sat_g"), carbohydrate=g("carbohydrate_g"),
             sugars=g("sugars_g"), sucrose=g("sucrose_g"), glucose=g("glucose_g"), fructose=g("fructose_g"), lactose=g("lactose_g"),
             maltose=g("maltose_g"), starch=g("starch_g"), fibre=g("fibre_g"), polyols=g("polyols_g"), alcohol=g("alcohol_g"),
             acid=g("organic_acids_g"), ash=g("ash_g"), sodium=g("sodium_mg"), potassium=g("potassium_mg"), calcium=g("calcium_mg"),
             iron=g("iron_mg"), vitc=g("vit_c_mg"))
    # A total given as "less than" must not fall below its own parts.
    if p["carbohydrate"] is not None and p["sugars"] is not None:
        p["carbohydrate"] = max(p["carbohydrate"], p["sugars"])
    jones, n625 = p["protein"], g("protein_n625_g")
    return p, round(6.25 * jones / n625, 2) if jones and n625 else None


GREENS = "spinach chard kale cabbage lettuce sorrel purslane cress rocket endive chicory mustard-greens turnip-greens pak-choi dandelion frisee radicchio lambs-lettuce batavia oak-leaf little-gem mesclun iceberg butterhead vine-leaf borage".split()
ROOTS = "potato carrot onion beet turnip swede parsnip celeriac kohlrabi radish daikon salsify garlic shallot leek horseradish jerusalem taro yam cassava lotus burdock jicama".split()
WORDS = (("spices and herbs", ""), ("oils", ""), ("vegetable", "vegetable"), ("tuber", "vegetable"), ("herbs", "greens"), ("fruit", "fruit"), ("legume", "pulse"), ("poultry", "poultry"), ("pork", "pork"), ("beef", "beef"), ("lamb", "beef"), ("cereal", "cereal"),
         ("pasta, rice", "cereal"), ("eggs", "egg"), ("dairy", "milk"), ("seafood", "shellfish"), ("fish, raw", "fish"), ("finfish", "fish"), ("raw meat", "beef"), ("milk", "milk"))


def class_of(ident, source, sr, cq):
    """Class of a food for what cooking leaves of its vitamins; empty when the table of retention has none for it."""
    if source[0] == "k":
        return ""
    row = sr[source[1:]] if source[0] == "n" else cq[source[1:]]
    group = (row["group"] if source[0] == "n" else row["subgroup"] or row["group"]).lower()
    name = (row["description"] if source[0] == "n" else row["name"]).lower()
    cls = next((c for w, c in WORDS if w in group), "")
    if cls == "vegetable":
        return "greens" if any(x in ident for x in GREENS) and "turnip" != ident else "roots" if any(x in ident for x in ROOTS) else "vegetable"
    if cls == "milk" and name.startswith("egg,"):
        return "egg"
    if cls == "fish" and ("crustacean" in name or "mollusk" in name):
        return "shellfish"
    if cls == "cereal" and ident.endswith("-flour"):
        return "flour"
    if group == "raw meat":
        return "poultry" if any(x in name for x in ("chicken", "turkey", "duck", "goose", "hen,", "capon", "quail", "pigeon", "guinea", "pheasant")) else "pork" if "pork" in name else "beef"
    return cls


def household(rows):
    densities, units = {}, {}
    for r in rows:
        m = r["measure"].lower().strip()
        one = float(r["grams"]) / float(r["amount"])
        unit = next((u for u in ML if re.match(re.escape(u) + r"\b", m)), None)
        if unit:
            rest = re.sub(r"\(.*?\)", "", m[len(unit):]).strip(" ,")
            state = next((s for s in sorted(STATES, key=len, reverse=True) if re.search(r"\b" + s + r"\b", rest)), None)
            key = unit if not rest or rest.startswith(("fluid", "spaghetti", "dry", "kernels")) else f"{unit} {state}" if state else None
            if rest.startswith("not packed"):
                key = unit
            if key and key not in densities and 0.02 < one / ML[unit] < 1.6:
                densities[key] = round(one / ML[unit], 4)
        else:
            name = next((c for c in sorted(COUNTS, key=len, reverse=True) if re.match(c + r"\b", m)), None)
            if name and name not in units:
                units[name] = one
    return densities, units


def main():
    words, sr28, weights, ciqual, out = sys.argv[1:6]
    sr = {r["ndb"]: r for r in table(sr28)}
    cq = {r["code"]: r for r in table(ciqual)}
    hh = {}
    for r in table(weights):
        hh.setdefault(r["ndb"], []).append(r)
    rows, faults, ids, names = [], [], set(), {}
    for n, line in enumerate(open(words, encoding="utf-8"), 1):
        line = line.rstrip("\n")
        if not line or line.startswith("#"):
            continue
        f = line.split("|")
        if len(f) != 11:
            faults.append(f"line {n}: {len(f)} fields where 11 are wanted: {line[:60]}")
            continue
        ident, source = f[0], f[1]
        extras = dict(e.split("=", 1) for e in f[10].split())
        if ident in ids:
            faults.append(f"line {n}: {ident} twice")
        ids.add(ident)
        densities, units, edible, factor = {}, {}, None, None
        if source[0] == "n":
            r = sr[source[1:]]
            parts, factor = from_sr28(r)
            densities, units = household(hh.get(source[1:], []))
            refuse = number(r["refuse_pct"])
            # Kitchens buy nuts and seeds shelled; the source's refuse there is the shell.
            edible = 100.0 if not refuse or r["group"].startswith("Nut") else 100 - refuse
            cite = "SR28 " + source[1:]
        elif source[0] == "c":
            parts, factor = from_ciqual(cq[source[1:]])
            cite = "Ciqual 2020 " + source[1:]
        else:
            parts = {k: float(v) for k, v in (x.split("=") for x in source[2:].split(","))}
            cite = "our own parts"
        if "acid" in extras:
            parts["acid"] = float(extras["acid"])
        if "also" in extras:
            # Sugars (and sodium) that the first source does not hold, from the same food of the other one.
            other, _ = from_ciqual(cq[extras["also"][1:]])
            taken = [k for k in ("sugars", "sucrose", "glucose", "fructose", "lactose", "maltose", "sodium") if parts.get(k) is None and other.get(k) is not None]
            for k in taken:
                parts[k] = other[k]
            if parts.get("sugars") is not None and parts.get("carbohydrate") is not None and parts["sugars"] > parts["carbohydrate"]:
                scale = parts["carbohydrate"] / parts["sugars"]
                for k in ("sugars", "sucrose", "glucose", "fructose", "lactose", "maltose"):
                    parts[k] = None if parts.get(k) is None else parts[k] * scale
            if not taken:
                faults.append(f"line {n}: {ident}: {extras['also']} holds nothing that was lacking")
            cite += f"; {taken[0] if taken else ''} {'and others ' if len(taken) > 1 else ''}Ciqual 2020 {extras['also'][1:]}"
        why = extras.get("why", "").replace("_", " ")
        marks = {}
        for k, v in extras.items():
            if k.startswith("own."):
                parts[k[4:]] = float(v)
            elif k.startswith("d."):
                if k == "d.":
                    densities = {}
                densities[k[2:] or "any"] = float(v)
                marks[k[2:] or "any"] = "*"
            elif k.startswith("u."):
                units[k[2:]] = float(v)
                marks[k[2:]] = "*"
        if "piece" not in units:
            first = next((u for u in ("medium", "fruit", "large", "clove", "head", "bulb") if u in units), None)
            if first:
                units["piece"] = units[first]
        main = ("water", "protein", "fat", "carbohydrate", "ash")
        lacking = [k for k in main if parts.get(k) is None]
        if len(lacking) == 1 and lacking[0] in ("water", "carbohydrate"):
            rest = 100 - sum(parts[k] for k in main if k != lacking[0]) - sum(parts.get(k) or 0 for k in ("fibre", "alcohol", "acid"))
            if rest >= (parts.get("sugars") or 0 if lacking[0] == "carbohydrate" else 0):
                parts[lacking[0]] = round(rest, 2)
                why = (why + "; " if why else "") + f"{lacking[0]} by difference"
        held = [parts.get(k) for k in main]
        if all(x is not None for x in held):
            total = sum(held) + sum(parts.get(k) or 0 for k in ("fibre", "alcohol", "acid"))
            if abs(total - 100) > 2 and not why:
                faults.append(f"line {n}: {ident}: parts sum to {total:.1f} g")
            if abs(total - 100) > 2 and why:
                why += f"; parts sum to {total:.1f} g"
        else:
            missing = [k for k, x in zip(("water", "protein", "fat", "carbohydrate", "ash"), held) if x is None]
            why = (why + "; " if why else "") + "not held: " + ", ".join(missing)
        listed = number(sr[source[1:]]["energy_kcal"]) if source[0] == "n" else number(cq[source[1:]]["energy_eu_kj"]) if source[0] == "c" else None
        if listed is not None and None not in held[:4]:
            # The energy its source lists, against that of the parts we hold: a large miss is said in the row.
            listed *= 4.184 if source[0] == "n" else 1
            polyols = parts.get("polyols") or 0
            eu = parts["protein"] * (6.25 / factor if factor else 1)
            own = 17 * (parts["carbohydrate"] - polyols) + 10 * polyols + 17 * eu + 37 * parts["fat"] + 29 * (parts.get("alcohol") or 0) + 13 * (parts.get("acid") or 0) + 8 * (parts.get("fibre") or 0)
            allowed = max(40, 0.15 * listed) if source[0] == "n" else max(12, 0.03 * listed)
            if abs(own - listed) > allowed:
                why = (why + "; " if why else "") + f"its source lists {listed:.0f} kJ, its parts make {own:.0f}"
        for lang, cell in zip(("en", "fr", "de", "es", "it", "ja"), f[2:8]):
            for name in cell.split(";"):
                key = (lang, name.strip().lower())
                if not key[1]:
                    continue
                if key in names and names[key] != ident:
                    faults.append(f"line {n}: {lang} \"{name}\" is already {names[key]}")
                names[key] = ident
        cell = lambda v: "" if v is None else f"{v:g}"
        pairs = lambda d: ";".join(f"{k}={v:g}{marks.get(k, '')}" for k, v in d.items())
        rows.append([ident, *f[2:8], cite, why, cell(factor or None), *[cell(parts.get(k)) for k in PARTS], pairs(densities), pairs(units), cell(edible), f[8], f[9], class_of(ident, source, sr, cq)])
    if faults:
        print("\n".join(faults), file=sys.stderr)
        sys.exit(1)
    with open(out, "w", encoding="utf-8", newline="\n") as o:
        o.write("# Title: Foods in kitchen words: composition, density, unit weights, edible share, allergens\n"
                "# Source: column source cites each row: USDA National Nutrient Database for Standard Reference, Release 28 (2016), by NDB number; ANSES, Ciqual table 2020, by code; or our own parts, said so in why\n"
                "# Licence: USDA public domain; Ciqual Licence Ouverte 2.0 (name ANSES, Ciqual 2020); our words CC0-1.0\n"
                "# Opened: 2026-11-25\n"
                "# Units: g per 100 g edible part, mineral columns and vitc in mg; carbohydrate without fibre; densities g/mL as state=value; units in g each, edible part; edible in percent of the bought weight; * marks an assumed figure; empty is not held\n"
                "# Made by: tools/foods/make_foods.py\n")
        o.write("\t".join(["id", "en", "fr", "de", "es", "it", "ja", "source", "why", "nfactor", *PARTS, "density", "units", "edible", "contains", "depends", "class"]) + "\n")
        for r in rows:
            o.write("\t".join(r) + "\n")
    print(f"{len(rows)} foods, {len(names)} names")


main()
