import { readPosition } from "../../core/formats/position-text.ts";
import { useState } from "react";
import { patched } from "../../core/edits/edit.ts";
import { changePlan } from "../../core/edits/object-edits.ts";
import type { Plan, Site } from "../../core/model/plan.ts";
import { FrostFields } from "../season/FrostFields.tsx";
import { TurnField } from "../form/NumberField.tsx";
import { SiteOutline } from "./SiteOutline.tsx";
import { TextField } from "../form/TextField.tsx";
import { nameProblem } from "../form/name-problem.ts";
import { climateWords } from "../season/climate-words.ts";
import { commit } from "../state/plan-actions.ts";
import { CommandButton } from "../commands/CommandButton.tsx";
import { siteClimate } from "../season/commands.ts";
import * as texts from "./words.ts";

type SiteChanges = { readonly [Key in keyof Site]?: Site[Key] | undefined };

/** Where the plot is, which way it lies, and its frosts. */
export function SiteFields({ plan }: { readonly plan: Plan }) {
  const { site } = plan;
  const set = (changes: SiteChanges, title: string) => {
    commit(changePlan({ site: patched<Site>(site, changes) }, title));
    return null;
  };
  return (
    <fieldset className="field-group">
      <legend>{texts.site}</legend>
      <TextField
        label={texts.name}
        value={site.name}
        isWide
        onApply={(text) => nameProblem(text) ?? set({ name: text.trim() }, texts.renameSite)}
      />
      <TurnField
        label={texts.compassDirectionTop}
        hint={texts.degreesClockwiseNorthWhere}
        value={site.upBearingDeg}
        onApply={(upBearingDeg) => {
          set({ upBearingDeg }, texts.turnNorth);
        }}
      />
      <SiteOutline plan={plan} />
      <FrostFields site={site} />
      <div className="field">
        <span className="field-name">{texts.climate}</span>
        <span className="field-value">
          {climateWords(site.climate)}{" "}
          <CommandButton of={siteClimate} className="link">
            {texts.change}
          </CommandButton>
        </span>
      </div>
      <PositionFields
        position={site.position}
        onApply={(position) => {
          set({ position }, texts.setPosition);
        }}
      />
    </fieldset>
  );
}

interface PositionFieldsProps {
  readonly position: Site["position"];
  readonly onApply: (position: Site["position"]) => void;
}

/** Latitude and longitude; one alone waits for the other. */
function PositionFields({ position, onApply }: PositionFieldsProps) {
  const [pending, setPending] = useState<Partial<NonNullable<Site["position"]>>>({});
  const set = (axis: "latitude" | "longitude", text: string) => {
    if (text.trim() === "") {
      setPending({});
      if (position) onApply(undefined);
      return null;
    }
    const read = readPosition(text, axis);
    if (!read.ok) return read.reason;
    const { ok: _, ...told } = read;
    const { latitude, longitude } = { ...(position ?? pending), ...told };
    if (latitude === undefined || longitude === undefined) {
      setPending(told);
      return null;
    }
    setPending({});
    onApply({ latitude, longitude });
    return null;
  };
  const shown = (degrees: number | undefined) => (degrees === undefined ? "" : String(degrees));
  const { latitude, longitude } = position ?? pending;
  return (
    <>
      <TextField
        label={texts.latitude}
        value={shown(latitude)}
        placeholder={texts.notSet}
        isNumeric
        onApply={(text) => set("latitude", text)}
      />
      <TextField
        label={texts.longitude}
        value={shown(longitude)}
        placeholder={texts.notSet}
        isNumeric
        hint={
          (latitude === undefined) !== (longitude === undefined)
            ? texts.bothAreNeeded
            : texts.sheetsOriginBothMay
        }
        onApply={(text) => set("longitude", text)}
      />
    </>
  );
}
