import { type DragEvent, useId, useState } from "react";
import { patched } from "../../core/edits/edit.ts";
import { pictureOver, putPicture } from "../../core/edits/picture-edits.ts";
import type { Picture } from "../../core/model/plan.ts";
import { takePicture } from "../../store/files/picture-file.ts";
import { layoutOf } from "../../core/model/layouts.ts";
import { FileField } from "../form/FileField.tsx";
import { commit, planNow } from "../state/plan-actions.ts";
import * as texts from "./dialog-words.ts";

interface PicturePickerProps {
  readonly label: string;
  readonly onNotice: (notice: string) => void;
}

/** A picture file chosen or dropped; it goes under the drawing as one undo step. */
export function PicturePicker({ label, onNotice }: PicturePickerProps) {
  const id = useId();
  const [reason, setReason] = useState<string | null>(null);
  const take = async (file: File) => {
    setReason(null);
    onNotice(texts.makingSmall);
    const taken = await takePicture(file);
    onNotice(taken.ok ? taken.notice : "");
    if (!taken.ok) {
      setReason(taken.reason);
      return;
    }
    const { plan, layoutId } = planNow();
    commit(putPicture(laid(pictureOver(taken.file, plan, layoutOf(plan, layoutId)), plan.picture)));
  };
  const drop = (event: DragEvent) => {
    const [file] = event.dataTransfer.files;
    if (!file) return;
    event.preventDefault();
    // The window would take it for a plan file.
    event.stopPropagation();
    void take(file);
  };
  return (
    <div className="picture-drop" onDrop={drop}>
      <FileField
        label={label}
        accept="image/jpeg,image/png,image/webp"
        describedBy={reason === null ? undefined : `${id}-reason`}
        onPick={(file) => void take(file)}
      />
      {reason !== null && (
        <p className="field-reason" id={`${id}-reason`} role="alert">
          {reason}
        </p>
      )}
    </div>
  );
}

/** In the place of an earlier one it keeps how that one was shown. */
function laid(picture: Picture, before: Picture | undefined): Picture {
  if (!before) return picture;
  const { opacity, isPrinted } = before;
  return patched<Picture>(picture, { opacity, isPrinted });
}
