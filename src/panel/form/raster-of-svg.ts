/** An SVG file drawn onto a canvas and read back as PNG. */

const MM_PER_INCH = 25.4;

/** @param dotsPerInch how many dots an inch of the page's paper gets */
export async function rasterOfSvg(svg: string, dotsPerInch: number): Promise<Uint8Array> {
  const [, width = "0", height = "0"] = /width="([\d.]+)mm" height="([\d.]+)mm"/.exec(svg) ?? [];
  const canvas = document.createElement("canvas");
  canvas.width = Math.round((Number(width) / MM_PER_INCH) * dotsPerInch);
  canvas.height = Math.round((Number(height) / MM_PER_INCH) * dotsPerInch);
  const image = new Image(canvas.width, canvas.height);
  const url = URL.createObjectURL(new Blob([svg], { type: "image/svg+xml" }));
  try {
    image.src = url;
    await image.decode();
    canvas.getContext("2d")?.drawImage(image, 0, 0, canvas.width, canvas.height);
  } finally {
    URL.revokeObjectURL(url);
  }
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, "image/png"));
  if (!blob) throw new Error("The picture is too large for this browser; choose fewer dots");
  return new Uint8Array(await blob.arrayBuffer());
}
