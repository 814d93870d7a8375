/** Outlines, lines and points of any GeoJSON object (RFC 7946), whatever its properties. */
import type { LonLat } from "../geometry/local-frame.ts";
import { shown } from "../model/problem.ts";
import type { ReadTraceList } from "./gpx-traces.ts";
import { type NewTrace, distinctPlaces, lonLat } from "./trace.ts";

/** Properties whose text names a thing, the first that is there. */
const NAME_FIELDS = ["name", "code", "label", "title", "Name", "NAME"];

type Fields = Readonly<Record<string, unknown>>;

/** A fault found on the way down: thrown and caught within this file. */
class Fault extends Error {
  readonly object: string;
  readonly got: string;
  readonly expected: string;

  constructor(object: string, got: string, expected: string) {
    super(`${object}: got ${got}, expected ${expected}`);
    this.object = object;
    this.got = got;
    this.expected = expected;
  }
}

export function geojsonTraces(value: unknown): ReadTraceList {
  try {
    const crs = fieldsOf(value)["crs"];
    if (crs !== undefined && crs !== null && !/CRS84|EPSG:+4326/i.test(JSON.stringify(crs))) {
      throw new Fault("crs", shown(JSON.stringify(crs)), "longitude and latitude (WGS 84)");
    }
    return { ok: true, traces: objectTraces(value, "", "", null) };
  } catch (fault) {
    if (!(fault instanceof Fault)) throw fault;
    return { ok: false, object: fault.object, got: fault.got, expected: fault.expected };
  }
}

function fieldsOf(value: unknown): Fields {
  return typeof value === "object" && value !== null ? (value as Fields) : {};
}

function listOf(value: unknown, object: string): readonly unknown[] {
  if (Array.isArray(value)) return value;
  throw new Fault(object, shown(value), "a list");
}

function objectTraces(
  value: unknown,
  object: string,
  name: string,
  role: string | null,
): readonly NewTrace[] {
  const fields = fieldsOf(value);
  const at = (part: string) => (object === "" ? part : `${object}.${part}`);
  switch (fields["type"]) {
    case "FeatureCollection":
      return listOf(fields["features"], at("features")).flatMap((feature, index) =>
        objectTraces(feature, at(`features[${index}]`), "", null),
      );
    case "GeometryCollection":
      return listOf(fields["geometries"], at("geometries")).flatMap((geometry, index) =>
        objectTraces(geometry, at(`geometries[${index}]`), name, role),
      );
    case "Feature": {
      // RFC 7946, 3.2: a feature may lie nowhere.
      if (fields["geometry"] === null) return [];
      const properties = fieldsOf(fields["properties"]);
      const own = properties["wideberth"];
      return objectTraces(
        fields["geometry"],
        at("geometry"),
        featureName(properties, fields["id"]),
        typeof own === "string" ? own : null,
      );
    }
    default:
      return geometryTraces(fields, object, name, role);
  }
}

function featureName(properties: Fields, id: unknown): string {
  const texts = NAME_FIELDS.map((field) => properties[field]);
  const found = texts.find((text) => typeof text === "string" && text.trim() !== "");
  return typeof found === "string" ? found.trim() : typeof id === "string" ? id : "";
}

function geometryTraces(
  fields: Fields,
  object: string,
  name: string,
  role: string | null,
): readonly NewTrace[] {
  const type = fields["type"];
  const inside = object === "" ? "coordinates" : `${object}.coordinates`;
  const list = () => listOf(fields["coordinates"], inside);
  const trace = (sort: NewTrace["sort"], rings: readonly (readonly LonLat[])[]): NewTrace => {
    const [places = [], ...holes] = rings;
    return { name, sort, what: String(type), places, holes, role };
  };
  const each = (make: (part: unknown, path: string) => NewTrace) =>
    list().map((part, index) => make(part, `${inside}[${index}]`));
  const area = (part: unknown, path: string) =>
    trace(
      "area",
      listOf(part, path).map((ring, index) => line(ring, `${path}[${index}]`, true)),
    );
  switch (type) {
    case "Point":
      return [trace("point", [[position(fields["coordinates"], inside)]])];
    case "MultiPoint":
      return each((part, path) => trace("point", [[position(part, path)]]));
    case "LineString":
      return [trace("line", [line(fields["coordinates"], inside, false)])];
    case "MultiLineString":
      return each((part, path) => trace("line", [line(part, path, false)]));
    case "Polygon":
      return [area(fields["coordinates"], inside)];
    case "MultiPolygon":
      return each(area);
    default:
      throw new Fault(object === "" ? "type" : `${object}.type`, shown(type), "a GeoJSON type");
  }
}

function line(value: unknown, object: string, isClosed: boolean): readonly LonLat[] {
  const places = listOf(value, object).map((each, index) => position(each, `${object}[${index}]`));
  return distinctPlaces(places, isClosed);
}

function position(value: unknown, object: string): LonLat {
  const [longitude, latitude] = listOf(value, object);
  const place =
    typeof longitude === "number" && typeof latitude === "number"
      ? lonLat(longitude, latitude)
      : null;
  if (place) return place;
  throw new Fault(object, JSON.stringify(value).slice(0, 60), "[longitude, latitude] in degrees");
}
