import { Suspense, lazy } from "react";
import { usePictureWork } from "../../store/window/picture-work.ts";
import * as texts from "./words.ts";

const PicturePanel = lazy(async () => {
  const { PicturePanel: Loaded } = await import("./PicturePanel.tsx");
  return { default: Loaded };
});

/** Room for the picture's panel, beside the sheet so that both can be used at once. */
export function PictureRegion() {
  const isOpen = usePictureWork((state) => state.isOpen);
  if (!isOpen) return null;
  return (
    <Suspense fallback={<p role="status">{texts.loadingThePicturesPanel}</p>}>
      <PicturePanel />
    </Suspense>
  );
}
