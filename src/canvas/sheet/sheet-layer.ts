/**
 * One layer of the sheet: a canvas of the drawing library and the one function that draws all that
 * lies on it. The library's stages, layers and shapes keep what they draw as objects, listen to
 * every pointer to find what it is over, and hold a second canvas for that; the sheet draws from
 * the plan and finds by geometry, so that they would only come first and be waited for.
 */
import { SceneCanvas } from "konva/lib/Canvas.js";
import type { Size } from "../scene/viewport.ts";

/** Draws a layer in CSS pixels from its upper left corner. */
export type Paint = (context: CanvasRenderingContext2D) => void;

export class SheetLayer {
  private readonly canvas = new SceneCanvas({ pixelRatio: 1 });
  private paint: Paint | null = null;
  private isAsked = false;

  /** Draws something else from now on. */
  setPaint(paint: Paint): void {
    this.paint = paint;
    this.batchDraw();
  }

  /** Puts its canvas over those that are there, or under them. */
  putInto(place: HTMLElement, isLowest: boolean): void {
    if (isLowest) place.prepend(elementOf(this.canvas));
    else place.append(elementOf(this.canvas));
  }

  remove(): void {
    elementOf(this.canvas).remove();
  }

  /**
   * Takes a size, which empties it, and is drawn before anything is painted: nothing empty is ever
   * seen. Not at once, since a view that is fitted to the new size would draw it again.
   */
  takeSize({ widthPx, heightPx }: Size, ratio: number): void {
    this.canvas.pixelRatio = ratio;
    this.canvas.setSize(widthPx, heightPx);
    this.isAsked = true;
    queueMicrotask(() => this.drawIfAsked());
  }

  /** Drawn with the next frame, unless it has been by then. */
  batchDraw(): void {
    if (this.isAsked) return;
    this.isAsked = true;
    requestAnimationFrame(() => this.drawIfAsked());
  }

  private drawIfAsked(): void {
    if (!this.isAsked) return;
    this.isAsked = false;
    const context = this.canvas.getContext();
    const { _context: native } = context;
    context.clear();
    context.save();
    this.paint?.(native);
    context.restore();
  }
}

function elementOf({ _canvas: element }: SceneCanvas): HTMLCanvasElement {
  return element;
}
