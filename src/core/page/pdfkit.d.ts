/** The part of pdfkit 0.20 used here; the published types lag behind it. */
declare module "pdfkit" {
  export interface PdfOptions {
    readonly pdfVersion: "1.7";
    /** Marks the file as PDF/UA-1; the tags are made by whoever paints. */
    readonly subset: "PDF/UA";
    readonly tagged: boolean;
    readonly autoFirstPage: boolean;
    /** null: no built-in font, which would be read from pdfkit's own folder. */
    readonly font: null;
    readonly lang: string;
    readonly displayTitle: boolean;
    readonly margin: number;
    readonly info: Readonly<Record<string, unknown>>;
  }

  export interface PdfPageOptions {
    /** Width and height in points. */
    readonly size: readonly [number, number];
    readonly margin: number;
  }

  export interface StructOptions {
    readonly alt?: string;
    /** Left, top, right, bottom on the page, points. */
    readonly bbox?: readonly number[];
    readonly scope?: "Column";
  }

  /** A piece of a page's content. */
  export interface StructContent {
    readonly refs: readonly unknown[];
  }

  export interface StructElement {
    add(child: StructElement | StructContent): this;
  }

  export class PDFDocument {
    constructor(options: PdfOptions);
    readonly info: Record<string, unknown>;
    /** The font in use; `font` within it is fontkit's. */
    readonly _font: { readonly font: { hasGlyphForCodePoint(codePoint: number): boolean } };
    on(event: "data", listener: (chunk: Uint8Array) => void): this;
    on(event: "end", listener: () => void): this;
    on(event: "error", listener: (error: Error) => void): this;
    addPage(options: PdfPageOptions): this;
    end(): void;
    registerFont(name: string, source: Uint8Array): this;
    font(name: string): this;
    fontSize(points: number): this;
    widthOfString(text: string): number;
    text(
      text: string,
      x: number,
      y: number,
      options: { readonly lineBreak: false; readonly baseline: "alphabetic" },
    ): this;
    save(): this;
    restore(): this;
    scale(factor: number): this;
    rotate(degrees: number, options: { readonly origin: readonly [number, number] }): this;
    fillOpacity(opacity: number): this;
    /** @param source a `data:` address; the same one is kept in the file once */
    image(
      source: string,
      x: number,
      y: number,
      options: { readonly width: number; readonly height: number },
    ): this;
    moveTo(x: number, y: number): this;
    lineTo(x: number, y: number): this;
    closePath(): this;
    rect(x: number, y: number, width: number, height: number): this;
    circle(x: number, y: number, radius: number): this;
    clip(rule?: "even-odd"): this;
    lineWidth(width: number): this;
    lineCap(style: "butt" | "round"): this;
    lineJoin(style: "miter" | "round"): this;
    dash(lengths: readonly number[]): this;
    undash(): this;
    fillColor(color: readonly [number, number, number]): this;
    strokeColor(color: readonly [number, number, number]): this;
    fill(rule?: "even-odd"): this;
    stroke(): this;
    outline: { addItem(title: string): unknown };
    struct(type: string, options?: StructOptions): StructElement;
    /** Puts an element at the root of the tree; all below it is ended with the file. */
    addStructure(element: StructElement): this;
    markStructureContent(tag: string): StructContent;
    markContent(tag: "Artifact", options: { readonly type: "Layout" }): this;
    endMarkedContent(): this;
    appendXML(xml: string): void;
  }
}
