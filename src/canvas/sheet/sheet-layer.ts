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

interface Room extends Size {
  /** Dots of the screen to a CSS pixel. */
  readonly ratio: number;
}

export class SheetLayer {
  private readonly canvas = new SceneCanvas({ pixelRatio: 1 });
  private paint: Paint | null = null;
  private room: Room | null = null;
  /** The room its dots were made for: none before there was something to draw. */
  private made: Room | null = null;
  private isAsked = false;

  /**
   * Draws something else from now on, or nothing. Dots of a whole sheet are megabytes that take
   * their time to be had: they are made when there is something to draw for the first time.
   */
  setPaint(paint: Paint | null): void {
    if (paint === null && this.paint === null) return;
    this.paint = paint;
    if (this.made !== this.room) this.makeRoom();
    else this.batchDraw();
  }

  /** Puts its canvas over those that are there, or under them. */
  putInto(place: HTMLElement, isLowest: boolean): void {
    if (isLowest) place.prepend(elementOf(this.canvas));
    else place.append(elementOf(this.canvas));
  }

  remove(): void {
    elementOf(this.canvas).remove();
  }

  /** Takes a size, which empties it. */
  takeSize(size: Size, ratio: number): void {
    this.room = { ...size, ratio };
    this.makeRoom();
  }

  /**
   * It is drawn before anything is painted: nothing empty is ever seen. Not at once, since a view
   * that is fitted to the new size would draw it again.
   */
  private makeRoom(): void {
    if (this.room === null || (this.paint === null && this.made === null)) return;
    this.made = this.room;
    this.canvas.pixelRatio = this.room.ratio;
    this.canvas.setSize(this.room.widthPx, this.room.heightPx);
    this.isAsked = true;
    queueMicrotask(() => this.drawIfAsked());
  }

  /** Drawn with the next frame, unless it has been by then. */
  batchDraw(): void {
    if (this.isAsked || this.made === null) return;
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
