#!/usr/bin/env python3
"""Makes data/foods/foods.tsv: our foods in kitchen words, each with figures whose source row it cites.

  make_foods.py WORDS SR28 HOUSEHOLD CIQUAL JAPAN OUT

WORDS      tools/foods/kitchen-words.txt (ours)
SR28       tab-separated composition of USDA SR28, one row a food
HOUSEHOLD  tab-separated household weights of USDA SR28
CIQUAL     tab-separated Ciqual table 2020 of ANSES
JAPAN      tools/foods/japan-2020.tsv: rows of the Standard Tables of Food Composition in Japan 2020
Python 3 standard library only. Prints every row whose parts do not sum to 100 g and that gives no reason, and fails.
"""
import re
import sys
import unicodedata

ML = {"cup": 236.5882365, "tbsp": 14.78676478125, "tsp": 4.92892159375, "fl oz": 29.5735295625}
PARTS = ["water", "protein", "fat", "sat", "carbohydrate", "sugars", "sucrose", "glucose", "fructose", "lactose", "maltose",
         "starch", "fibre", "polyols", "alcohol", "acid", "ash", "sodium", "potassium", "calcium", "iron", "vitc", "trans", "cholesterol", "vitd", "vita"]
STATES = ["packed", "unpacked", "sifted", "unsifted", "chopped", "grated", "ground", "sliced", "shredded", "whipped", "crumbled", "diced", "mashed", "whole", "halves", "slivered"]
COUNTS = ["small", "medium", "large", "extra large", "clove", "stalk", "sprig", "leaf", "slice", "stick", "head", "bulb", "ear", "spear", "fruit"]


def table(path):
    with open(path, encoding="utf-8") as f:
        lines = [line.rstrip("\n") for line in f if not line.startswith("#")]
    head = lines[0].split("\t")
    return [dict(zip(head, line.split("\t"))) for line in lines[1:]]


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
             potassium=g("potassium_mg"), calcium=g("calcium_mg"), iron=g("iron_mg"), vitc=g("vit_c_mg"), trans=g("trans_g"), cholesterol=g("cholesterol_mg"),
             vitd=g("vit_d_ug"), vita=g("vit_a_rae_ug"))
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
             iron=g("iron_mg"), vitc=g("vit_c_mg"), cholesterol=g("cholesterol_mg"), vitd=g("vit_d_ug"))
    # Plants hold no cholesterol to speak of; where the table left it out, it is none.
    if p["cholesterol"] is None and r["group"].startswith(("fruits", "cereal")) or r["subgroup"] in ("spices", "herbs", "vegetable oils", "sugars and honey"):
        p["cholesterol"] = 0.0
    # A total given as "less than" must not fall below its own parts.
    if p["carbohydrate"] is not None and p["sugars"] is not None:
        p["carbohydrate"] = max(p["carbohydrate"], p["sugars"])
    jones, n625 = p["protein"], g("protein_n625_g")
    return p, round(6.25 * jones / n625, 2) if jones and n625 else None


def from_japan(r):
    g = lambda k: number(r[k])
    whole = [g(k) or 0 for k in ("water", "protein", "fat", "fibre", "acid", "ash", "alcohol")]
    p = {k: g(k) for k in ("water", "protein", "fat", "fibre", "acid", "ash", "alcohol", "cholesterol", "sodium", "potassium", "calcium", "iron", "vitc", "sugars")}
    # Its carbohydrate is by difference, fibre and mostly the acid inside: what is left after all other parts is what is available.
    p["carbohydrate"] = round(max(0.0, 100 - sum(whole)), 2)
    if p["sugars"] is not None:
        p["sugars"] = min(p["sugars"], p["carbohydrate"])
    # Soya by its own factor, as that table counts it; else the general one.
    return p, 5.71 if r["code"].startswith("04") else 6.25


# What is sugar through and through: all of it is added to whatever it goes into (21 CFR 101.9(c)(6)(iii): sugars, syrups, honey).
ALL_ADDED = set("""sugar icing-sugar brown-sugar demerara honey maple-syrup golden-syrup treacle glucose-syrup dextrose invert-sugar lactose-powder fructose-powder agave-syrup vanilla-sugar liquid-caramel
    cane-molasses soft-brown-sugar grenadine syrup-1-1 syrup-30b corn-syrup-dark malt-syrup maple-sugar cane-syrup""".split())
# Juice, wine and flour of one plant, and what only sounds sweetened.
NONE_ADDED = set("""quark spelt-flour rolled-oats cocoa cocoa-mass cocoa-alkalised cocoa-high-fat coconut-milk apple-juice red-wine white-wine rose-wine riesling potato-baked sweet-potato-baked butternut-baked nectarine white-nectarine
    oat-bran wheat-germ pumpkin-roasted aubergine-roasted tomato-roasted endive-roasted garlic-roasted courgette-roasted potato-roast apple-baked kefir sheep-yoghurt goat-yoghurt fromage-blanc-0 fromage-blanc-8 maize-flour flour-t65
    flour-t80 flour-t110 rice-bran popcorn blood-orange-juice pineapple-juice grape-juice tomato-juice carrot-juice lemon-juice-bottled lime-juice-bottled prune-juice sugar-apple boysenberry sour-cherry-frozen strawberry-frozen tarragon
    tomato-pulp tomato-passata tomato-double tomato-crushed tomato-paste beetroot-juice milk-powder-semi evaporated-milk kombu-dashi ichiban-dashi shiitake-dashi royal-jelly bee-pollen nutritional-yeast acai""".split())
# Foods of one thing, grown or caught, with nothing put in: whatever sugar they hold is their own.
NATURAL_SR = ("Vegetables", "Fruits", "Beef", "Poultry", "Pork", "Lamb", "Finfish", "Nut", "Legumes", "Spices", "Cereal Grains", "Fats", "Dairy")
NATURAL_CQ = ("pasta, rice and grains", "vegetable oils", "other fats", "butters", "fruits", "legumes", "nuts and seeds", "potatoes and other tubers", "vegetables", "cooked meat", "eggs", "fish, cooked", "fish, raw", "raw meat", "seafood, cooked",
              "seafood, raw", "herbs", "spices", "seaweed", "milk", "cheese and similar", "cream and similar", "water")
PUT_IN = re.compile(r"sweeten|syrup|sugar|dressing|mayonnaise|pickle|relish|candied|chocolate|nectar|cocktail|sauce|baked|flavor|flavour|glazed|eggnog|drink|imitation|catsup|concentrate|maraschino|breaded|salad|refried|fruit on|spread|falafel|hummus|margarine|caramel|jam|compote|custard|frozen, .*yolk|peanut butter|canned|tinned|honey roast", re.I)


def added(ident, source, parts, rows):
    """Whether its sugars are added ones: "1" all, "0" none, empty not known."""
    if parts.get("sugars") == 0 or parts.get("carbohydrate") == 0:
        return "0"
    if ident in ALL_ADDED:
        return "1"
    if ident in NONE_ADDED:
        return "0"
    if source[0] == "k":
        return ""
    row = rows[source]
    if source[0] == "j":
        # Rows of one plant or animal; what the table lists among pickles, cakes of fish and seasonings has had something put in.
        return "0" if source[1:3] in ("04", "05", "06", "07", "08", "09", "10", "11") and source[1:] not in ("06088", "06104", "06105", "06138", "06143", "06148", "06152", "06306", "06389", "07022", "07024", "07103", "07170", "07179", "07181",
               "09022", "10070", "10204", "10353", "10358", "10379", "10381", "10384", "10385", "10386") else ""
    group, name = (row["group"], row["description"]) if source[0] == "n" else (row["subgroup"], row["name"])
    natural = group.startswith(NATURAL_SR) if source[0] == "n" else group in NATURAL_CQ
    return "0" if natural and not PUT_IN.search(name) else ""


def fold(name):
    """The matcher's way of making names comparable: case, accents and hyphens gone."""
    out = []
    for c in unicodedata.normalize("NFKD", name):
        if "\u0300" <= c <= "\u036f" or c in "\u2019'":
            continue
        c = {"œ": "oe", "æ": "ae", "ß": "ss"}.get(c.lower(), c.lower())
        out.append(c if c.isalnum() or c in "%\u3099\u309aー" else " ")
    return " ".join("".join(out).split())


GREENS = "spinach chard kale cabbage lettuce sorrel purslane cress rocket endive chicory mustard-greens turnip-greens pak-choi dandelion frisee radicchio lambs-lettuce batavia oak-leaf little-gem mesclun iceberg butterhead vine-leaf borage".split()
ROOTS = "potato carrot onion beet turnip swede parsnip celeriac kohlrabi radish daikon salsify garlic shallot leek horseradish jerusalem taro yam cassava lotus burdock jicama".split()
WORDS = (("spices and herbs", ""), ("oils", ""), ("vegetable", "vegetable"), ("tuber", "vegetable"), ("herbs", "greens"), ("fruit", "fruit"), ("legume", "pulse"), ("poultry", "poultry"), ("pork", "pork"), ("beef", "beef"), ("lamb", "beef"), ("cereal", "cereal"),
         ("pasta, rice", "cereal"), ("eggs", "egg"), ("dairy", "milk"), ("seafood", "shellfish"), ("fish, raw", "fish"), ("finfish", "fish"), ("raw meat", "beef"), ("milk", "milk"))


JAPAN_CLASS = {"01": "cereal", "04": "pulse", "06": "vegetable", "07": "fruit", "08": "vegetable", "10": "fish", "11": "beef"}


def class_of(ident, source, sr, cq):
    """Class of a food for what cooking leaves of its vitamins; empty when the table of retention has none for it."""
    if source[0] == "k":
        return ""
    if source[0] == "j":
        return JAPAN_CLASS.get(source[1:3], "")
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
    words, sr28, weights, ciqual, japan, out = sys.argv[1:7]
    sr = {r["ndb"]: r for r in table(sr28)}
    cq = {r["code"]: r for r in table(ciqual)}
    jp = {r["code"]: r for r in table(japan)}
    everything = {**{"n" + k: v for k, v in sr.items()}, **{"c" + k: v for k, v in cq.items()}, **{"j" + k: v for k, v in jp.items()}}
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
        if source[0] != "k" and source not in everything:
            faults.append(f"line {n}: {ident}: there is no row {source}")
            continue
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
        elif source[0] == "j":
            parts, factor = from_japan(jp[source[1:]])
            refuse = number(jp[source[1:]]["refuse"])
            edible = 100 - refuse if refuse else None
            cite = "Japan 2020 " + source[1:]
        else:
            # "k:" with nothing behind it: a food whose names and allergens are known and whose figures no source at hand holds.
            parts = {k: float(v) for k, v in (x.split("=") for x in source[2:].split(",") if x)}
            if parts.get("fat") == 0:
                parts["trans"], parts["cholesterol"] = 0.0, 0.0
                # What dissolves in fat alone is not in a pure substance without any.
                parts["vitd"], parts["vita"] = 0.0, 0.0
            cite = "our own parts" if parts else "no figures held"
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
        if source[0] == "j":
            listed = number(jp[source[1:]]["kj"])
        if listed is not None and None not in held[:4]:
            # The energy its source lists, against that of the parts we hold: a large miss is said in the row.
            listed *= 4.184 if source[0] == "n" else 1
            polyols = parts.get("polyols") or 0
            eu = parts["protein"] * (6.25 / factor if factor else 1)
            own = 17 * (parts["carbohydrate"] - polyols) + 10 * polyols + 17 * eu + 37 * parts["fat"] + 29 * (parts.get("alcohol") or 0) + 13 * (parts.get("acid") or 0) + 8 * (parts.get("fibre") or 0)
            # Japan counts amino acids, fatty acids and measured sugars, so its energy lies lower throughout.
            allowed = max(12, 0.03 * listed) if source[0] == "c" else max(40, 0.15 * listed)
            if abs(own - listed) > allowed:
                why = (why + "; " if why else "") + f"its source lists {listed:.0f} kJ, its parts make {own:.0f}"
        for lang, cell in zip(("en", "fr", "de", "es", "it", "ja"), f[2:8]):
            for name in cell.split(";"):
                key = (lang, fold(name))
                if not key[1]:
                    continue
                if key in names and names[key] != ident:
                    faults.append(f"line {n}: {ident}: {lang} \"{name}\" is already {names[key]}")
                names[key] = ident
        cell = lambda v: "" if v is None else f"{v:g}"
        pairs = lambda d: ";".join(f"{k}={v:g}{marks.get(k, '')}" for k, v in d.items())
        rows.append([ident, *f[2:8], cite, why, cell(factor or None), *[cell(parts.get(k)) for k in PARTS], extras.get("added", added(ident, source, parts, everything)), pairs(densities), pairs(units), cell(edible), f[8], f[9], class_of(ident, source, sr, cq)])
    if faults:
        print("\n".join(faults), file=sys.stderr)
        sys.exit(1)
    with open(out, "w", encoding="utf-8", newline="\n") as o:
        o.write("# Title: Foods in kitchen words: composition, density, unit weights, edible share, allergens\n"
                "# Source: column source cites each row: USDA National Nutrient Database for Standard Reference, Release 28 (2016), by NDB number; ANSES, Ciqual table 2020, by code; MEXT, Standard Tables of Food Composition in Japan 2020, by code; or our own parts, said so in why\n"
                "# Licence: USDA public domain; Ciqual Licence Ouverte 2.0 (name ANSES, Ciqual 2020); Japan standard terms of use of the government 2.0 (name the ministry); our words CC0-1.0\n"
                "# Opened: 2026-11-25\n"
                "# Units: g per 100 g edible part, mineral columns, vitc and cholesterol in mg, vitd and vita (retinol activity equivalents) in micrograms; added 1 when all sugars are added ones, 0 when none; carbohydrate without fibre; densities g/mL as state=value; units in g each, edible part; edible in percent of the bought weight; * marks an assumed figure; empty is not held\n"
                "# Made by: tools/foods/make_foods.py\n")
        o.write("\t".join(["id", "en", "fr", "de", "es", "it", "ja", "source", "why", "nfactor", *PARTS, "added", "density", "units", "edible", "contains", "depends", "class"]) + "\n")
        for r in rows:
            o.write("\t".join(r) + "\n")
    print(f"{len(rows)} foods, {len(names)} names")


main()
