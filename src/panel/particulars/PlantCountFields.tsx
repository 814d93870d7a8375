import { alongBedOf, lengthened, roomAround } from "../../core/beds/bed-stretch.ts";
import { changePlantings } from "../../core/edits/object-edits.ts";
import { setPlantsAndOutline } from "../../core/edits/planting-size.ts";
import { type PlantRoom, plantRoom, plantsInRow, rowLength } from "../../core/beds/plant-room.ts";
import { formatLength } from "../../core/model/length.ts";
import type { Planting } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { CountField } from "../form/NumberField.tsx";
import { plantRoomWords } from "./plant-room-words.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import { commit } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";
import * as steps from "./step-words.ts";

/**
 * Plants, rows and plants in a row, which always agree: more rows of the same plants are shorter
 * rows, and a number of plants in a row gives the plants. How many fit stands below.
 */
export function PlantCountFields({ planting }: { readonly planting: Planting }) {
  const layout = useShownLayout();
  const plan = useShownPlan();
  const book = usePlanStore((state) => state.book);
  const { code, plants, rows, outline } = planting;
  const variety = plan.varieties.find(({ id }) => id === planting.variety);
  const kind = variety && book.kind(variety.kind);
  const room = kind ? plantRoom(kind, outline) : null;
  const set = (changes: Parameters<typeof changePlantings>[2], title: string) =>
    commit(changePlantings(layout.id, [planting.id], changes, title));
  const perRow = plants === undefined || !rows ? undefined : plantsInRow(plants, rows);
  return (
    <>
      <CountField
        label={texts.plants}
        value={plants}
        onApply={(next) => set({ plants: next }, steps.setPlants(code))}
      />
      <div className="field-pair">
        <CountField
          label={texts.rows}
          value={rows}
          onApply={(next) => set({ rows: next }, steps.setRows(code))}
        />
        <CountField
          label={texts.plantsInARow}
          value={perRow}
          onApply={(next) => {
            if (next === undefined) return;
            const count = rows ?? room?.grid?.rows ?? 1;
            set({ rows: count, plants: next * count }, steps.setPlantsInRow(code));
          }}
        />
      </div>
      {plants !== undefined && rows !== undefined && rows > 0 && plants % rows !== 0 && (
        <p className="field-hint">{texts.lastRowShort(plants, rows)}</p>
      )}
      {kind && room && <p className="field-hint">{plantRoomWords(room, rows, plan.units)}</p>}
      {room && <RoomOffers planting={planting} room={room} />}
    </>
  );
}

interface RoomOffersProps {
  readonly planting: Planting;
  readonly room: PlantRoom;
}

/** When plants and ground do not agree: the length that takes the plants, or the plants it takes. */
function RoomOffers({ planting, room }: RoomOffersProps) {
  const layout = useShownLayout();
  const { units } = useShownPlan();
  const { plants, code } = planting;
  if (plants === undefined || plants === 0) return null;
  const rows = planting.rows ?? room.grid?.rows ?? 1;
  const fits = room.grid ? rows * room.grid.perRow : room.plants;
  const along = alongBedOf(planting, layout.beds);
  const neededM = rowLength(room, plants, rows);
  const isOther = room.grid !== null && plantsInRow(plants, rows) !== room.grid.perRow;
  if (!isOther && plants <= fits) return null;
  const longer = along && isOther ? lengthened(layout, along, planting, neededM) : null;
  const free = along ? roomAround(layout, along, planting) : null;
  const freeText = free ? formatLength(free.toM - free.fromM, units) : "";
  return (
    <div className="offers">
      {longer && (
        <button
          type="button"
          onClick={() =>
            commit(
              setPlantsAndOutline(
                layout.id,
                planting.id,
                { plants, rows, outline: longer },
                steps.fitToPlants(code, plants),
              ),
            )
          }
        >
          {texts.makeItLong(formatLength(neededM, units), plants)}
        </button>
      )}
      {along && !longer && isOther && free && (
        <p className="field-hint">
          {texts.needsMoreBed(plants, formatLength(neededM, units), rows, freeText)}
        </p>
      )}
      {fits !== plants && (
        <button
          type="button"
          onClick={() =>
            commit(
              changePlantings(
                layout.id,
                [planting.id],
                { plants: fits, rows },
                steps.setPlants(code),
              ),
            )
          }
        >
          {texts.plantThoseThatFit(fits)}
        </button>
      )}
    </div>
  );
}
