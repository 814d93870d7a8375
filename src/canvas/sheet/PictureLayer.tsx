import { useCallback, useEffect, useState } from "react";
import type { Picture } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import type { Brush } from "../draw/brush.ts";
import type { drawPicture } from "../draw/draw-picture.ts";
import { SheetShape } from "./SheetShape.tsx";
import type { Colours } from "../draw/sheet-colours.ts";

/** The picture under everything else; no layer at all while there is none to see. */
export function PictureLayer({ colours }: { readonly colours: Colours }) {
  const picture = usePlanStore((state) => state.shown.picture);
  const isLeftOut = useWindowStore((state) => state.hidden.has("picture"));
  const shown = useDots(picture);
  const draw = useCallback(
    (brush: Brush) => {
      if (picture && shown) shown.drawPicture(brush, picture, shown.dots);
    },
    [picture, shown],
  );
  return picture && shown && picture.isHidden !== true && !isLeftOut ? (
    <SheetShape colours={colours} draw={draw} isLowest />
  ) : null;
}

interface Shown {
  readonly data: string;
  readonly dots: ImageBitmap;
  readonly drawPicture: typeof drawPicture;
}

/**
 * Decoded once for each picture, however it is moved about, by a part that only plans with a
 * picture need. Null: not yet, no picture that can be shown, or the part could not be fetched.
 */
function useDots(picture: Picture | undefined): Shown | null {
  const [decoded, setDecoded] = useState<Shown | null>(null);
  const data = picture?.data;
  const mediaType = picture?.mediaType;
  useEffect(() => {
    if (data === undefined || mediaType === undefined) return;
    let isWanted = true;
    const decode = async () => {
      const part = await import("../draw/draw-picture.ts");
      const dots = await part.decodedPicture(data, mediaType);
      if (isWanted) setDecoded(dots && { data, dots, drawPicture: part.drawPicture });
      else dots?.close();
    };
    decode().catch(() => setDecoded(null));
    return () => {
      isWanted = false;
    };
  }, [data, mediaType]);
  return decoded !== null && decoded.data === data ? decoded : null;
}
