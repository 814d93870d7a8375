/** Words of opening and saving files. */

/** What a file turns out to be. */
export const pngPicture = "a PNG picture";
export const jpegPicture = "a JPEG picture";
export const gifPicture = "a GIF picture";
export const pdfDocument = "a PDF document";
export const zipArchive = "a ZIP archive or office document";
export const gzipArchive = "a gzip archive";
export const utf16Text = "text in UTF-16";
export const planOrGeoJson = "a plan file or GeoJSON";
export const byteCount = (count: number) => `${count} bytes`;
export const atMostBytes = (count: number) => `at most ${count} bytes`;
export const unreadable = "a file that cannot be read (moved, deleted or not permitted)";
export const asUtf8 = (wanted: string) => `${wanted}, as text in UTF-8`;
export const webPage = "a web page or XML";
export const notUtf8 = "text that is not UTF-8";
export const outlineFile = "GPX or GeoJSON";
export const faultWhileReading = "a fault while reading";

/** A picture under the drawing. */
export const pictureTooHeavy = (file: string, size: string, most: string) =>
  `${file}: ${size}; at most ${most} can be read.`;
export const pictureUnreadable = (file: string) =>
  `${file} cannot be read (moved, deleted or not permitted).`;
export const noPicture = (file: string) => `${file} is no JPEG, PNG or WebP picture.`;
export const pictureTooLarge = (file: string, size: string, mostMillions: number) =>
  `${file}, ${size}, is too large: at most ${mostMillions} million pixels. Save a smaller copy first.`;
export const pictureDamaged = (file: string) =>
  `${file} is damaged, or too large for this browser.`;
export const pictureKept = (file: string, was: string, kept: string) =>
  `${file}: ${was}. Kept as ${kept}, without the camera's notes such as where it was taken.`;

/** Plan files. */
export const openerMissing =
  "The part of the program that opens plans could not be fetched. Is the network there? The open plan is as it was.";
export const planOrGeoJsonFiles = "Plan or GeoJSON";
export const planFiles = "Plan";
export const openRefused = "The browser refused to open a file.";
export const opened = (file: string) => `Opened ${file}.`;
export const twoVersions = (file: string, stored: string, at: string) =>
  `${file} and "${stored}" in this browser (saved ${at}) are two versions of one plan, and the one here has changes that are in no file. Open the file as a plan of its own? Both are kept then.`;
export const noAnswer = "no answer when fetching the part of the program that opens files";
export const connectAndRetry =
  "it to be there; connect to the network or reload this page, then try again";
export const planWithFault = (fault: string) => `a plan with a fault (${fault})`;
export const planThatOpens = "a plan that opens again; undo the last change";
export const downloadStarted = (file: string) => `Download started: ${file}.`;
export const savedTo = (file: string) => `Saved to ${file}.`;
export const savedToOther = (file: string) =>
  `Saved to ${file}. The file the plan came from had been changed elsewhere and was left alone.`;
export const notWritten = "The file could not be written. The plan is unchanged.";
export const notOpened = (problem: string) => `Not opened: ${problem}`;
export const pixels = (width: number, height: number) => `${width} × ${height} pixels`;
