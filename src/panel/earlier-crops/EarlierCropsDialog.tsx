import { useState } from "react";
import { removeEarlierCrops } from "../../core/edits/earlier-crops.ts";
import type { EarlierCrop } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { Dialog } from "../form/Dialog.tsx";
import { EarlierCropForm } from "./EarlierCropForm.tsx";
import { EarlierCropsTakeOver } from "./EarlierCropsTakeOver.tsx";
import { MarkList } from "./MarkList.tsx";
import { seedCellOf } from "./ground-history-words.ts";
import { cropCount, cropName, placeWords } from "./earlier-crop-words.ts";
import { commit } from "../state/plan-actions.ts";
import { useShownLayout, useShownPlan } from "../state/use-shown-plan.ts";
import * as texts from "./words.ts";

type Editing = { readonly crop: EarlierCrop | null };

/** What grew on this ground in earlier years, for the check of volunteers and for rotation. */
export function EarlierCropsDialog({ onClose }: { readonly onClose: () => void }) {
  const { earlierCrops } = useShownPlan();
  const [editing, setEditing] = useState<Editing | null>(null);
  return (
    <>
      <Dialog title={texts.earlierCrops} onClose={onClose} isWide>
        <p className="soft">{texts.grewGroundBeforeSeason}</p>
        <section className="csv-part" aria-label={texts.entered}>
          {earlierCrops.length === 0 ? (
            <p className="region-empty">{texts.noneEnteredYet}</p>
          ) : (
            <CropTable onEdit={(crop) => setEditing({ crop })} />
          )}
          <p className="dialog-actions">
            <button type="button" onClick={() => setEditing({ crop: null })}>
              {texts.addAnEarlierCrop}
            </button>
            {earlierCrops.length > 1 && (
              <button
                type="button"
                onClick={() => {
                  const ids = earlierCrops.map(({ id }) => id);
                  commit(removeEarlierCrops(ids, texts.deleteCrop(cropCount(ids.length))));
                }}
              >
                {texts.deleteAll(earlierCrops.length)}
              </button>
            )}
          </p>
        </section>
        <MarkList />
        <EarlierCropsTakeOver />
      </Dialog>
      {editing && <EarlierCropForm crop={editing.crop} onClose={() => setEditing(null)} />}
    </>
  );
}

function CropTable({ onEdit }: { readonly onEdit: (crop: EarlierCrop) => void }) {
  const plan = useShownPlan();
  const layout = useShownLayout();
  const book = usePlanStore((state) => state.book);
  const crops = plan.earlierCrops.toSorted((a, b) => b.year - a.year);
  return (
    <div className="table-scroll csv-table" role="region" tabIndex={0} aria-label={texts.crops}>
      <table>
        <thead>
          <tr>
            <th scope="col">{texts.yearField}</th>
            <th scope="col">{texts.kindField}</th>
            <th scope="col">{texts.variety}</th>
            <th scope="col">{texts.wentToSeed}</th>
            <th scope="col">{texts.where}</th>
            <th scope="col">{texts.note}</th>
            <th scope="col">{texts.change}</th>
          </tr>
        </thead>
        <tbody>
          {crops.map((crop) => (
            <tr key={crop.id}>
              <td>{crop.year}</td>
              <td>{book.kind(crop.kind)?.name ?? crop.kind}</td>
              <td>{crop.varietyName ?? "–"}</td>
              <td>{seedCellOf(crop.wentToSeed ?? "unknown")}</td>
              <td>{placeWords(crop, layout, plan)}</td>
              <td>{crop.note ?? ""}</td>
              <td>
                <CropButtons crop={crop} name={cropName(crop, book)} onEdit={onEdit} />
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

interface CropButtonsProps {
  readonly crop: EarlierCrop;
  readonly name: string;
  readonly onEdit: (crop: EarlierCrop) => void;
}

function CropButtons({ crop, name, onEdit }: CropButtonsProps) {
  return (
    <>
      <button
        type="button"
        className="act"
        aria-label={texts.changeName(name)}
        onClick={() => onEdit(crop)}
      >
        {texts.change}
      </button>{" "}
      <button
        type="button"
        className="act"
        aria-label={texts.deleteCrop(name)}
        onClick={() => commit(removeEarlierCrops([crop.id], texts.deleteCrop(name)))}
      >
        {texts.deleteWord}
      </button>
    </>
  );
}
