import { useEffect, useRef, useState } from "react";
import { changePicture, removePicture } from "../../core/edits/picture-edits.ts";
import type { Picture } from "../../core/model/plan.ts";
import { closePictureWork } from "../../store/window/picture-work.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import { CheckField } from "../form/ChoiceField.tsx";
import { PictureFields } from "./PictureFields.tsx";
import { PicturePicker } from "./PicturePicker.tsx";
import { PictureScale } from "./PictureScale.tsx";
import { commit, windowNow } from "../state/plan-actions.ts";
import { useShownPlan } from "../state/use-shown-plan.ts";
import { viewNow } from "../state/view-state.ts";
import * as texts from "./dialog-words.ts";
import "./picture.css";

/** The picture under the drawing: chosen, scaled by a known length, laid, faded, taken away. */
export function PicturePanel() {
  const { picture } = useShownPlan();
  const heading = useRef<HTMLHeadingElement>(null);
  const [notice, setNotice] = useState("");
  useEffect(() => heading.current?.focus(), []);
  const close = () => {
    putToolsAway();
    closePictureWork();
    document.getElementById("main")?.focus();
  };
  return (
    <section className="region picture-panel" aria-labelledby="picture-heading">
      <header className="region-head">
        <h2 id="picture-heading" ref={heading} tabIndex={-1}>
          {texts.pictureUnderTheDrawing}
        </h2>
        <button type="button" className="quiet" onClick={close}>
          {texts.close}
        </button>
      </header>
      {!picture && <p>{texts.airPhotoSurveySketch}</p>}
      {picture && <LaidPicture picture={picture} />}
      {picture?.locked !== true && (
        <PicturePicker
          label={picture ? texts.anotherPicture : texts.choosePicture}
          onNotice={setNotice}
        />
      )}
      <p role="status">{notice}</p>
    </section>
  );
}

function LaidPicture({ picture }: { readonly picture: Picture }) {
  const isLocked = picture.locked === true;
  const set = (changes: Partial<Picture>, title: string) => commit(changePicture(changes, title));
  return (
    <>
      <p>
        <b>{picture.name}</b>
        {texts.pixels(picture.widthPx, picture.heightPx)}
      </p>
      <CheckField
        label={texts.hidden}
        isOn={picture.isHidden === true}
        onSet={(isHidden) => set({ isHidden }, isHidden ? texts.hidePicture : texts.showPicture)}
      />
      <CheckField
        label={texts.printedPlotMapsToo}
        isOn={picture.isPrinted === true}
        onSet={(isPrinted) =>
          set({ isPrinted }, isPrinted ? texts.printPicture : texts.keepOffPaper)
        }
      />
      <CheckField
        label={texts.lockedStaysWhere}
        isOn={isLocked}
        onSet={(locked) => {
          putToolsAway();
          set({ locked }, locked ? texts.lockPicture : texts.unlockPicture);
        }}
      />
      {!isLocked && (
        <>
          <PictureScale picture={picture} />
          <PictureFields picture={picture} />
          <PictureActions />
        </>
      )}
    </>
  );
}

function PictureActions() {
  const isMoving = useWindowStore((state) => state.tool === "move-picture");
  const toggle = () => {
    viewNow().showSheet();
    windowNow().pickTool(isMoving ? "select" : "move-picture");
  };
  const remove = () => {
    putToolsAway();
    commit(removePicture());
    document.getElementById("picture-heading")?.focus();
  };
  return (
    <p className="region-foot">
      <button type="button" aria-pressed={isMoving} onClick={toggle}>
        {texts.moveItByDragging}
      </button>
      <button type="button" onClick={remove}>
        {texts.deleteThePicture}
      </button>
    </p>
  );
}

function putToolsAway(): void {
  const { tool, pickTool } = windowNow();
  if (tool === "mark-length" || tool === "move-picture") pickTool("select");
}
