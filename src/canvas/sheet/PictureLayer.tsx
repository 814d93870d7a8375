import { useCallback, useEffect, useState } from "react";
import type { Picture } from "../../core/model/plan.ts";
import { usePlanStore } from "../../store/plan/plan-store.ts";
import { useWindowStore } from "../../store/window/window-store.ts";
import type { Brush } from "../draw/brush.ts";
import { decodedPicture, drawPicture } from "../draw/draw-picture.ts";
import { SheetShape } from "./SheetShape.tsx";
import type { Colours } from "../draw/sheet-colours.ts";

/** The picture under everything else; no layer at all while there is none to see. */
export function PictureLayer({ colours }: { readonly colours: Colours }) {
  const picture = usePlanStore((state) => state.shown.picture);
  const isLeftOut = useWindowStore((state) => state.hidden.has("picture"));
  const dots = useDots(picture);
  const draw = useCallback(
    (brush: Brush) => {
      if (picture && dots) drawPicture(brush, picture, dots);
    },
    [picture, dots],
  );
  return picture && dots && picture.isHidden !== true && !isLeftOut ? (
    <SheetShape colours={colours} draw={draw} isLowest />
  ) : null;
}

/** Decoded once for each picture, however it is moved about. */
function useDots(picture: Picture | undefined): ImageBitmap | null {
  const [decoded, setDecoded] = useState<{ data: string; dots: ImageBitmap | null } | null>(null);
  const data = picture?.data;
  const mediaType = picture?.mediaType;
  useEffect(() => {
    if (data === undefined || mediaType === undefined) return;
    let isWanted = true;
    const decode = async () => {
      const dots = await decodedPicture(data, mediaType);
      if (isWanted) setDecoded({ data, dots });
      else dots?.close();
    };
    void decode();
    return () => {
      isWanted = false;
    };
  }, [data, mediaType]);
  return decoded !== null && decoded.data === data ? decoded.dots : null;
}
