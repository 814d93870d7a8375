/** What only a feature written by Wideberth says of a planting. */
import type { Bed } from "../model/plan.ts";
import { type FeatureProperties, ownFields } from "./geojson-schema.ts";

/** Whether the feature says that Wideberth wrote it. */
export function writtenHere(properties: Readonly<Record<string, unknown>>): boolean {
  return properties["wideberth"] === "planting" || properties["wideberth"] === "source";
}

export function ownOf(properties: FeatureProperties) {
  return writtenHere(properties) ? ownFields.parse(properties) : {};
}

/** Fields of a planting that only Wideberth writes. */
export function ownPlantingFields(properties: FeatureProperties, beds: readonly Bed[]) {
  const own = ownOf(properties);
  const bed = beds.find(({ code }) => code === own.bed);
  return {
    ...(own.code === undefined ? {} : { code: own.code }),
    ...(bed === undefined ? {} : { bed: bed.id }),
    ...(own.startMethod === undefined || own.startDate === undefined
      ? {}
      : {
          start: {
            method: own.startMethod,
            date: own.startDate,
            ...(own.sownUnderGlass === undefined ? {} : { sownUnderGlass: own.sownUnderGlass }),
          },
        }),
    ...(own.endDate === undefined ? {} : { end: own.endDate }),
    ...(own.plants === undefined ? {} : { plants: own.plants }),
    ...(own.rows === undefined ? {} : { rows: own.rows }),
    ...(own.keepApart === undefined ? {} : { keepApart: own.keepApart }),
    ...(own.note === undefined ? {} : { note: own.note }),
  };
}
