/** Who writes the field record on this device: a name typed once, kept in the browser and not in the plan. */
import { create } from "zustand";
import { LIMITS } from "../../core/model/limits.ts";
import { stored } from "./stored.ts";

interface FieldPerson {
  /** Empty: nobody said. */
  readonly who: string;
  readonly setWho: (who: string) => void;
}

const storedWho = stored("wideberth.who", (value) =>
  typeof value === "string" || typeof value === "number" ? String(value).slice(0, LIMITS.name) : "",
);

export const useFieldPerson = create<FieldPerson>()((set) => ({
  who: storedWho.load(),
  setWho: (text) => {
    const who = text.trim().slice(0, LIMITS.name);
    storedWho.save(who);
    set({ who });
  },
}));
