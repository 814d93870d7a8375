/** Reads square codes from the camera. The reader is fetched with this file, when it is asked for. */
import jsqr from "jsqr";
import * as words from "./words.ts";

/** Longer side of the picture that is read, pixels: more costs time and reads no better. */
const READ_PX = 640;
/** Milliseconds between two looks. */
const LOOK_MS = 150;

export interface CameraReader {
  readonly stop: () => void;
}

/** Why the camera cannot be used, in words. */
export function cameraFault(error: unknown): string {
  const name = error instanceof DOMException ? error.name : "";
  switch (name) {
    case "NotAllowedError":
      return words.cameraNotAllowed;
    case "NotFoundError":
    case "OverconstrainedError":
      return words.noCamera;
    case "NotReadableError":
      return words.cameraInUse;
    case "SecurityError":
      return words.cameraNeedsHttps;
    default:
      return words.cameraUnusable;
  }
}

/**
 * Starts the camera that looks away from the person, shows it, and hands on each code it reads.
 * Rejects when there is no camera or it may not be used.
 */
export async function startCamera(
  video: HTMLVideoElement,
  onCode: (text: string) => void,
): Promise<CameraReader> {
  if (!globalThis.isSecureContext) throw new DOMException("plain http", "SecurityError");
  if (!("mediaDevices" in navigator)) throw new DOMException("no camera", "NotFoundError");
  const stream = await navigator.mediaDevices.getUserMedia({
    audio: false,
    video: { facingMode: "environment", width: { ideal: 1280 } },
  });
  video.srcObject = stream;
  const stop = () => {
    for (const track of stream.getTracks()) track.stop();
    video.srcObject = null;
  };
  try {
    await video.play();
  } catch (error) {
    stop();
    throw error;
  }
  const canvas = document.createElement("canvas");
  const pen = canvas.getContext("2d", { willReadFrequently: true });
  const look = () => {
    const text = pen && codeIn(video, canvas, pen);
    if (text !== null && text !== "") onCode(text);
  };
  const timer = setInterval(look, LOOK_MS);
  return {
    stop: () => {
      clearInterval(timer);
      stop();
    },
  };
}

function codeIn(
  video: HTMLVideoElement,
  canvas: HTMLCanvasElement,
  pen: CanvasRenderingContext2D,
): string | null {
  const { videoWidth, videoHeight } = video;
  if (videoWidth === 0) return null;
  const scale = Math.min(1, READ_PX / Math.max(videoWidth, videoHeight));
  canvas.width = Math.round(videoWidth * scale);
  canvas.height = Math.round(videoHeight * scale);
  pen.drawImage(video, 0, 0, canvas.width, canvas.height);
  const { data, width, height } = pen.getImageData(0, 0, canvas.width, canvas.height);
  return jsqr(data, width, height, { inversionAttempts: "dontInvert" })?.data ?? null;
}
