/** A file of outlines (GPX or GeoJSON) to the list of what it holds, or why it is none. */
import { parseJson } from "../model/parse-json.ts";
import { type Read, refuse } from "../model/problem.ts";
import { geojsonTraces } from "./geojson-traces.ts";
import { gpxTraces } from "./gpx-traces.ts";
import { TRACE_LIMITS, type Trace } from "./trace.ts";
import { xmlElements } from "../formats/xml-elements.ts";

/** @param file its name, for messages */
export function readTraces(text: string, file: string): Read<readonly Trace[]> {
  const fail = (object: string, got: string, expected: string) =>
    refuse({ file, object, field: "", got, expected });
  const list = /^\uFEFF?\s*</.test(text) ? xmlTraces(text) : jsonTraces(text, file);
  if ("problems" in list) return list;
  if (!list.ok) return fail(list.object, list.got, list.expected);
  const count = list.traces.length;
  const places = list.traces.reduce((sum, trace) => sum + trace.places.length, 0);
  if (count === 0) return fail("", "no outlines, lines or points", "at least one");
  if (count > TRACE_LIMITS.traces) {
    return fail("", `${count} things`, `at most ${TRACE_LIMITS.traces}`);
  }
  if (places > TRACE_LIMITS.places) {
    return fail("", `${places} places`, `at most ${TRACE_LIMITS.places}`);
  }
  return { ok: true, value: list.traces.map((trace, index) => ({ ...trace, number: index + 1 })) };
}

function xmlTraces(text: string) {
  const read = xmlElements(text);
  const fail = (object: string, got: string) => ({
    ok: false as const,
    object,
    got,
    expected: "a GPX file",
  });
  if (!read.ok) return fail(`line ${read.line}`, read.reason);
  if (read.root.name !== "gpx") return fail("", `XML that starts with <${read.root.name}>`);
  return gpxTraces(read.root);
}

function jsonTraces(text: string, file: string) {
  const read = parseJson(text, file);
  return read.ok ? geojsonTraces(read.value) : read;
}
