"""Pairs of one group nearer than a limit, by GEOS through Shapely 2, timed.

Usage: python geos-peer.py FIELD.json OUT, with FIELD.json holding `corners` (x, y of four corners
each), `groups` (a number each) and `limitM`. Writes OUT.pairs (int32 pairs of places) and
OUT.metres (float64), prints one JSON object. Two routes are tried, the faster one counts: the tree
with its own distance query, and the tree over grown boxes with every candidate measured.
"""

import json
import sys
import time

import numpy
import shapely

field = json.load(open(sys.argv[1], encoding="utf8"))
corners = numpy.array(field["corners"], dtype="float64").reshape(-1, 4, 2)
groups = numpy.array(field["groups"], dtype="int32")
limit = float(field["limitM"])


def measured(shapes, ours, candidates):
    near, found = candidates
    apart = near != found
    near, found = near[apart], found[apart]
    metres = shapely.distance(shapes[near], shapes[found])
    close = metres < limit - 1e-6
    return ours[near[close]], ours[found[close]], metres[close]


def by_distance_query(shapes, tree):
    return tree.query(shapes, predicate="dwithin", distance=limit)


def by_grown_boxes(shapes, tree):
    bounds = shapely.bounds(shapes)
    grown = shapely.box(
        bounds[:, 0] - limit, bounds[:, 1] - limit, bounds[:, 2] + limit, bounds[:, 3] + limit
    )
    return tree.query(grown)


def pairs_by(route):
    parts = []
    for group in numpy.unique(groups):
        ours = numpy.flatnonzero(groups == group)
        shapes = shapely.polygons(corners[ours])
        parts.append(measured(shapes, ours, route(shapes, shapely.STRtree(shapes))))
    return [numpy.concatenate(part) for part in zip(*parts)]


best = None
for route in (by_distance_query, by_grown_boxes):
    times = []
    for _ in range(5 if len(corners) <= 10_000 else 3):
        start = time.perf_counter()
        pairs = pairs_by(route)
        times.append((time.perf_counter() - start) * 1000)
    least = min(times)
    if best is None or least < best[0]:
        best = (least, route.__name__, pairs)

least, name, (parents, sources, metres) = best
numpy.stack([parents, sources], axis=1).astype("int32").tofile(sys.argv[2] + ".pairs")
metres.astype("float64").tofile(sys.argv[2] + ".metres")
print(
    json.dumps(
        {
            "ms": least,
            "route": name,
            "shapely": shapely.__version__,
            "geos": shapely.geos_version_string,
        }
    )
)
