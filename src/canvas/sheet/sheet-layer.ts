/**
 * One layer of the sheet, on a canvas of its own. It stands without a stage of the drawing library:
 * that listens to every pointer to find what it is over, and draws a layer before it is told how.
 */
import { Layer } from "konva/lib/Layer.js";
import type { Size } from "../scene/viewport.ts";

export class SheetLayer extends Layer {
  private isAsked = false;

  constructor() {
    super({ listening: false });
  }

  /** Puts its canvas over those that are there, or under them. */
  putInto(place: HTMLElement, isLowest: boolean): void {
    const canvas = this.getNativeCanvasElement();
    if (isLowest) place.prepend(canvas);
    else place.append(canvas);
  }

  /**
   * Takes a size, which empties it, and is drawn before anything is painted: nothing empty is ever
   * seen. Not at once, since a view that is fitted to the new size would draw it again.
   */
  takeSize({ widthPx, heightPx }: Size, ratio: number): void {
    const canvas = this.getCanvas();
    canvas.pixelRatio = ratio;
    canvas.setSize(widthPx, heightPx);
    this.isAsked = true;
    queueMicrotask(() => this.drawIfAsked());
  }

  /** Drawn with the next frame, unless it has been by then. */
  override batchDraw(): this {
    if (this.isAsked) return this;
    this.isAsked = true;
    requestAnimationFrame(() => this.drawIfAsked());
    return this;
  }

  override draw(): this {
    this.isAsked = false;
    return super.draw();
  }

  private drawIfAsked(): void {
    if (this.isAsked) this.draw();
  }
}
