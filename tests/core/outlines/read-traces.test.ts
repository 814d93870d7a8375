/** Reading files of outlines: element names of GPX 1.1 (topografix.com/GPX/1/1/gpx.xsd), RFC 7946. */
import { describe, expect, test } from "vitest";
import { readTraces } from "../../../src/core/outlines/read-traces.ts";
import type { Trace } from "../../../src/core/outlines/trace.ts";

/** As a receiver writes it: metadata, times and heights, an extension in a namespace of its own. */
const GPX = `<?xml version="1.0" encoding="UTF-8"?>
<gpx version="1.1" creator="a receiver" xmlns="http://www.topografix.com/GPX/1/1" xmlns:x="urn:x">
  <metadata><name>Lower field</name><bounds minlat="1" minlon="1" maxlat="2" maxlon="2"/></metadata>
  <wpt lat="50.1" lon="7.2"><ele>91.5</ele><name>Old oak</name><sym>Flag</sym></wpt>
  <rte><name>Hedge &amp; ditch</name><rtept lat="50.1" lon="7.2"/><rtept lat="50.2" lon="7.3"></rtept></rte>
  <trk><name><![CDATA[Fence <north>]]></name>
    <trkseg>
      <trkpt lat="50.1" lon="7.2"><time>2027-03-01T10:00:00Z</time></trkpt>
      <trkpt lat="50.1" lon="7.2"/>
      <trkpt lat="50.11" lon='7.21'><extensions><x:hr>60</x:hr></extensions></trkpt>
    </trkseg>
    <trkseg><trkpt lat="-50" lon="-7"/><trkpt lat="-50.1" lon="-7"/></trkseg>
    <trkseg/>
  </trk>
</gpx>`;

function traces(text: string, file = "field.gpx"): readonly Trace[] {
  const read = readTraces(text, file);
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

function refusal(text: string): string {
  const read = readTraces(text, "field");
  if (read.ok) throw new Error("was read");
  return read.problems.map(({ object, got }) => `${object}: ${got}`).join("; ");
}

test("a GPX file gives its tracks by segment, its routes and its waypoints", () => {
  expect(
    traces(GPX).map(({ number, name, sort, what, places }) => [
      number,
      name,
      sort,
      what,
      places.length,
    ]),
  ).toEqual([
    [1, "Fence <north> part 1", "line", "track", 2],
    [2, "Fence <north> part 2", "line", "track", 2],
    [3, "Hedge & ditch", "line", "route", 2],
    [4, "Old oak", "point", "waypoint", 1],
  ]);
  expect(traces(GPX)[0]?.places[1]).toEqual({ latitude: 50.11, longitude: 7.21 });
});

test("waypoints with one name and numbers from 1 are corners of one outline as well", () => {
  const waypoint = (name: string, lat: number, lon: number) =>
    `<wpt lat="${lat}" lon="${lon}"><name>${name}</name></wpt>`;
  const inOrder = (names: readonly string[]) =>
    `<gpx>${names.map((name, index) => waypoint(name, 50 + index, 7)).join("")}</gpx>`;
  const [area] = traces(inOrder(["B07 3", "B07 1", "B07 2", "B08 1", "B08 2"]));
  expect(area).toMatchObject({ name: "B07", sort: "area" });
  expect(area?.places.map(({ latitude }) => latitude)).toEqual([51, 52, 50]);
  expect(traces(inOrder(["B07 1", "B07 2", "B07 4"])).map(({ sort }) => sort)).toEqual([
    "point",
    "point",
    "point",
  ]);
});

test("GeoJSON of every geometry type is read, nested or bare", () => {
  const ring = [
    [7, 50],
    [7.1, 50],
    [7.1, 50.1],
    [7, 50],
  ];
  const geometries = [
    { type: "Point", coordinates: [7, 50, 91] },
    { type: "MultiPoint", coordinates: [[7, 50]] },
    { type: "LineString", coordinates: ring },
    { type: "MultiLineString", coordinates: [ring] },
    { type: "Polygon", coordinates: [ring, ring] },
    { type: "MultiPolygon", coordinates: [[ring], [ring]] },
  ];
  const file = {
    type: "FeatureCollection",
    features: [
      { type: "Feature", geometry: null, properties: null },
      {
        type: "Feature",
        geometry: { type: "GeometryCollection", geometries },
        properties: { name: "Home field", wideberth: "hedge" },
      },
    ],
  };
  const read = traces(JSON.stringify(file), "field.geojson");
  expect(read.map(({ sort, places, holes }) => [sort, places.length, holes.length])).toEqual([
    ["point", 1, 0],
    ["point", 1, 0],
    ["line", 4, 0],
    ["line", 4, 0],
    ["area", 3, 1],
    ["area", 3, 0],
    ["area", 3, 0],
  ]);
  expect(read.every(({ name, role }) => name === "Home field" && role === "hedge")).toBe(true);
  expect(traces(JSON.stringify(geometries[4]), "x.json")).toHaveLength(1);
});

describe("refused with the place:", () => {
  test.each([
    ["a latitude of 91", '<gpx><wpt lat="91" lon="7"/></gpx>', "gpx > wpt\\[1\\]"],
    ["no longitude", '<gpx><trk><trkseg><trkpt lat="50"/></trkseg></trk></gpx>', "trkpt\\[1\\]"],
    ["a hexadecimal latitude", '<gpx><wpt lat="0x10" lon="7"/></gpx>', "wpt"],
    ["an element never closed", "<gpx>\n<trk></gpx>", "line 2"],
    ["a document type", '<!DOCTYPE a [<!ENTITY b "c">]><gpx/>', "document type"],
    ["a web page", "<html></html>", "starts with <html>"],
    ["an empty GPX file", "<gpx/>", "no outlines"],
    ["a word as a coordinate", '{"type":"Point","coordinates":["7",50]}', "coordinates"],
    ["no GeoJSON at all", '{"type":"Polgyon","coordinates":[]}', "type"],
    [
      "other coordinates than longitude and latitude",
      '{"type":"Point","coordinates":[7,50],"crs":{"type":"name","properties":{"name":"EPSG:25832"}}}',
      "crs",
    ],
    ["elements within a thousand others", "<a>".repeat(1000), "64"],
    ["too many things", `<gpx>${'<wpt lat="1" lon="1"/>'.repeat(2001)}</gpx>`, "2001 things"],
  ])("%s", (_, text, reason) => {
    expect(refusal(text)).toMatch(new RegExp(reason));
  });
});

test("a waypoint's name of any length is read in one go, and only short ones number corners", () => {
  const named = (name: string) =>
    `<gpx>${[1, 2, 3].map((corner) => `<wpt lat="50.${corner}" lon="7.${corner % 2}"><name>${name}${corner}</name></wpt>`).join("")}</gpx>`;
  const sorts = (name: string) => traces(named(name)).map(({ sort }) => sort);
  expect(sorts("B07 ")).toEqual(["area", "point", "point", "point"]);
  expect(traces(named("B07_-_"))[0]?.name).toBe("B07");
  expect(sorts("B07")).toEqual(["point", "point", "point"]);
  // A pattern that goes back over what it has read would take minutes for one of these.
  for (const run of ["_", " ", "-", "1", "a_"]) {
    expect(sorts(`a${run.repeat(290_000 / run.length)}_b`)).toEqual(["point", "point", "point"]);
  }
});
