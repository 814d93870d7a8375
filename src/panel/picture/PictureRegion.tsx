import { Suspense, lazy } from "react";
import { usePictureWork } from "../../store/window/picture-work.ts";

const PicturePanel = lazy(async () => {
  const { PicturePanel: Loaded } = await import("./PicturePanel.tsx");
  return { default: Loaded };
});

/** Room for the picture's panel, beside the sheet so that both can be used at once. */
export function PictureRegion() {
  const isOpen = usePictureWork((state) => state.isOpen);
  if (!isOpen) return null;
  return (
    <Suspense fallback={<p role="status">Loading the picture's panel ...</p>}>
      <PicturePanel />
    </Suspense>
  );
}
