/**
 * Where the device is, while the grower wants to know. Nothing asks for it unasked, it leaves the
 * device by no way, and it is written down nowhere; only what is placed with it stays in the plan.
 */
import { create } from "zustand";
import type { LonLat } from "../../core/geometry/local-frame.ts";

/**
 * `insecure`: the page did not come over https; `absent`: the browser has none; `refused`: the
 * grower or the system says no; `unavailable`: no satellite and no other help; `late`: none so far.
 */
export type PositionFault = "insecure" | "absent" | "refused" | "unavailable" | "late";

export interface Fix {
  readonly place: LonLat;
  /** The place is within so many metres, with 95 % confidence (Geolocation, W3C). */
  readonly accuracyM: number;
}

interface PositionState {
  readonly isOn: boolean;
  /** The last that was heard; null: nothing yet, or it is no longer known. */
  readonly fix: Fix | null;
  readonly fault: PositionFault | null;
  readonly start: () => void;
  readonly stop: () => void;
}

const WATCH: PositionOptions = { enableHighAccuracy: true, maximumAge: 5_000, timeout: 30_000 };

let watching: number | null = null;

export const usePosition = create<PositionState>()((set) => {
  const stop = () => {
    if (watching !== null) navigator.geolocation.clearWatch(watching);
    watching = null;
    set({ isOn: false, fix: null, fault: null });
  };
  const fail = (fault: PositionFault) => set({ fault, fix: null });
  const start = () => {
    stop();
    set({ isOn: true });
    if (!globalThis.isSecureContext) return fail("insecure");
    if (!("geolocation" in navigator)) return fail("absent");
    watching = navigator.geolocation.watchPosition(
      ({ coords }) => {
        const { longitude, latitude, accuracy } = coords;
        set({ fix: { place: { longitude, latitude }, accuracyM: accuracy }, fault: null });
      },
      // A place that is no longer heard of is not shown: the walker has gone on.
      ({ code }) => fail(FAULTS.get(code) ?? "unavailable"),
      WATCH,
    );
  };
  return { isOn: false, fix: null, fault: null, start, stop };
});

/** Codes of GeolocationPositionError. */
const FAULTS: ReadonlyMap<number, PositionFault> = new Map([
  [1, "refused"],
  [2, "unavailable"],
  [3, "late"],
]);
