#!/usr/bin/env python3
"""Writes the section of a specification on tactile signs: what all named standards allow together, with the clauses behind it.

    python3 docs/examples/specification.py http://127.0.0.1:8080 us-ada-2010 us-ca-2019 > tactile-signs.md

Ends with 1 when the standards exclude each other somewhere: then the section says where, and a person has to decide.
Python 3.9 or newer and its standard library, nothing else. Where the service asks for API keys, put one with the scope check
into FINGERTRUE_KEY. The windows are as exact as the tables of the service; nothing is rounded but what is printed, and always inwards.
"""
import json
import math
import os
import sys
import urllib.error
import urllib.parse
import urllib.request

MILLIMETRES_PER_INCH = 25.4


def get(base, path, **query):
    address = f"{base}{path}" + (f"?{urllib.parse.urlencode(query)}" if query else "")
    key = os.environ.get("FINGERTRUE_KEY")
    request = urllib.request.Request(address, headers={"Authorization": f"Bearer {key}"} if key else {})
    try:
        with urllib.request.urlopen(request, timeout=30) as answer:
            return json.load(answer)
    except urllib.error.HTTPError as error:
        problem = json.load(error) if "problem+json" in error.headers.get("content-type", "") else {}
        sys.exit(f"{address}: {error.code} {problem.get('title', error.reason)}. {problem.get('detail', '')}")
    except urllib.error.URLError as error:
        sys.exit(f"{address}: {error.reason}")


def inwards(value, is_least, digits):
    """Rounds a limit so that what keeps to the printed figure keeps to the limit."""
    step = 10**digits
    # What floating point adds to a figure that is exact is no reason to go a whole step further.
    scaled = round(value * step, 6)
    return (math.ceil(scaled) if is_least else math.floor(scaled)) / step


def end(value, is_least, unit):
    if unit != "mm":
        return f"{inwards(value, is_least, 4):g} ({unit})"
    millimetres = inwards(value, is_least, 2)
    inches = inwards(value / MILLIMETRES_PER_INCH, is_least, 4)
    return f"{millimetres:.2f} mm ({inches:.4f} in)"


def sentence(window):
    """What the window asks, as words. Every window has ends, or kinds, or asks for a yes."""
    least, most, unit = window.get("min"), window.get("max"), window["unit"]
    if least is not None and least == most:
        return f"{end(least, True, unit)} exactly"
    if least is not None and most is not None:
        return f"from {end(least, True, unit)} to {end(most, False, unit)}"
    if least is not None:
        return f"{end(least, True, unit)} at least"
    if most is not None:
        return f"{end(most, False, unit)} at most"
    if window.get("kinds"):
        return " or ".join(window["kinds"])
    return "required"


def main(base, ids):
    tables = [get(base, f"/v1/standards/{urllib.parse.quote(name)}") for name in ids]
    titles = {row["requirement"]: row["title"] for table in tables for row in table["requirements"]}
    common = get(base, "/v1/standards/common", ids=",".join(ids))

    print("# Tactile signs of permanent rooms\n")
    print("Signs satisfy all of:\n")
    for standard in common["standards"]:
        print(f"- {standard['title']} ({standard['id']}, revision {standard['revision']} of the table)")
    print("\n| what | allowed | requirements |\n| --- | --- | --- |")
    for window in common["windows"]:
        title = titles.get(window["from"][0], window["quantity"])
        only = "; ".join(" or ".join(names) for names in (window.get("parts"), window.get("sections")) if names)
        print(f"| {title}{f' ({only})' if only else ''} | {sentence(window)} | {', '.join(window['from'])} |")

    if common["conditional"]:
        print("\n## What only a sign decides\n")
        for row in common["conditional"]:
            print(f"- {row['text']}")
    if common["conflicts"]:
        print("\n## What no sign can satisfy\n")
        for conflict in common["conflicts"]:
            print(f"- {conflict['text']} ({', '.join(conflict['requirements'])})")
    print("\nThis section is no certification. State and local codes may be stricter; the authority having jurisdiction decides.")
    return 1 if common["conflicts"] else 0


if __name__ == "__main__":
    if len(sys.argv) < 3:
        sys.exit("Usage: specification.py BASE-URL STANDARD [STANDARD ...]")
    sys.exit(main(sys.argv[1].rstrip("/"), sys.argv[2:]))
