/**
 * Waypoints, routes and tracks of a GPX file (GPX 1.1, topografix.com/GPX/1/1; 1.0 names them
 * alike). Waypoints numbered from 1 on, such as `B07 1` to `B07 4`, are also the corners of one
 * outline: so they are walked with a receiver, and so Wideberth writes the corners of its beds.
 */
import { type LonLat } from "../geometry/local-frame.ts";
import { trailingDigits } from "../model/trailing-digits.ts";
import { type NewTrace, distinctPlaces, lonLat } from "./trace.ts";
import type { XmlElement } from "../formats/xml-elements.ts";

export type ReadTraceList =
  | { readonly ok: true; readonly traces: readonly NewTrace[] }
  | {
      readonly ok: false;
      readonly object: string;
      readonly got: string;
      readonly expected: string;
    };

const PLACE_TAGS = ["wpt", "rtept", "trkpt"];

export function gpxTraces(root: XmlElement): ReadTraceList {
  const wrong = wrongPlace(root, "gpx");
  if (wrong !== null) {
    return {
      ok: false,
      object: wrong,
      got: "no lat and lon in degrees",
      expected: "a latitude from -90 to 90 and a longitude from -180 to 180",
    };
  }
  const routes = named(root, "rte").map((route) => lineOf("route", nameOf(route), route, "rtept"));
  const tracks = named(root, "trk").flatMap((track) =>
    named(track, "trkseg").map((segment, index, all) =>
      lineOf("track", partName(nameOf(track), index, all.length), segment, "trkpt"),
    ),
  );
  const waypoints = named(root, "wpt");
  return {
    ok: true,
    traces: [...cornerOutlines(waypoints), ...tracks, ...routes, ...waypoints.map(pointOf)].filter(
      ({ places }) => places.length > 0,
    ),
  };
}

function named(element: XmlElement, name: string): readonly XmlElement[] {
  return element.children.filter((child) => child.name === name);
}

function nameOf(element: XmlElement): string {
  return named(element, "name")[0]?.text.trim() ?? "";
}

function partName(name: string, index: number, count: number): string {
  return count === 1 ? name : `${name} part ${index + 1}`.trim();
}

/** The first place that is none, in words; null when all are places. */
function wrongPlace(element: XmlElement, within: string): string | null {
  for (const [index, child] of element.children.entries()) {
    const object = `${within} > ${child.name}[${index + 1}]`;
    if (PLACE_TAGS.includes(child.name) && placeOf(child) === null) return object;
    const inner = wrongPlace(child, object);
    if (inner !== null) return inner;
  }
  return null;
}

function placeOf({ attributes }: XmlElement): LonLat | null {
  const [longitude, latitude] = ["lon", "lat"].map((key) => {
    const text = attributes.get(key)?.trim() ?? "";
    // XML's decimal: never hexadecimal, never nothing.
    return /^[-+]?(\d+(\.\d*)?|\.\d+)([eE][-+]?\d+)?$/.test(text) ? Number(text) : Number.NaN;
  });
  return lonLat(longitude ?? Number.NaN, latitude ?? Number.NaN);
}

function placesOf(element: XmlElement, tag: string): readonly LonLat[] {
  return named(element, tag).flatMap((point) => placeOf(point) ?? []);
}

function lineOf(what: string, name: string, element: XmlElement, tag: string): NewTrace {
  const places = distinctPlaces(placesOf(element, tag), false);
  return { name, sort: places.length > 1 ? "line" : "point", what, places, holes: [], role: null };
}

function pointOf(waypoint: XmlElement): NewTrace {
  const place = placeOf(waypoint);
  const places = place ? [place] : [];
  return { name: nameOf(waypoint), sort: "point", what: "waypoint", places, holes: [], role: null };
}

/** Longest waypoint's name that is looked at for a corner's number. */
const LONGEST_NAME = 200;

/** `B07 1` or `B07_1` as corner 1 of `B07`; null for other names. */
function cornerName(text: string): { readonly name: string; readonly number: number } | null {
  if (text.length > LONGEST_NAME) return null;
  const digits = trailingDigits(text);
  let end = text.length - digits.length;
  const isParted = end > 0 && /[\s_-]/.test(text.charAt(end - 1));
  if (digits === "" || digits.length > 4 || !isParted) return null;
  while (end > 0 && /[\s_-]/.test(text.charAt(end - 1))) end -= 1;
  // A name made of dashes alone keeps one of them: something has to be called.
  const name = text.slice(0, end) || text.slice(0, 1);
  return { name, number: Number(digits) };
}

/** Outlines whose corners are waypoints with one name and the numbers 1, 2, 3 ... after it. */
function cornerOutlines(waypoints: readonly XmlElement[]): readonly NewTrace[] {
  const found = new Map<string, Map<number, LonLat>>();
  for (const waypoint of waypoints) {
    const corner = cornerName(nameOf(waypoint));
    const place = placeOf(waypoint);
    if (!corner || !place) continue;
    const corners = found.get(corner.name) ?? new Map<number, LonLat>();
    found.set(corner.name, corners);
    corners.set(corner.number, place);
  }
  return [...found].flatMap(([name, corners]) => {
    const places = [...corners.keys()]
      .sort((a, b) => a - b)
      .flatMap((key) => corners.get(key) ?? []);
    const isWhole = places.length >= 3 && corners.has(1) && corners.has(places.length);
    const trace = { name, what: "numbered waypoints", holes: [], role: null };
    return isWhole
      ? [{ ...trace, sort: "area" as const, places: distinctPlaces(places, true) }]
      : [];
  });
}
