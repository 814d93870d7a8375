/** Words of the parts of picture that are fetched when they are opened. */

export const widthOnTheGround = "Width on the ground";
export const leftEdgeRightHeight = "From its left edge to its right; the height follows.";
export const groundInPixels = (pixelsText: string | number) => `Ground in ${pixelsText} pixels`;
export const middleAcross = "Middle, across";
export const middleUp = "Middle, up";
export const turn = "Turn";
export const degreesClockwiseFromUpright = "Degrees clockwise from upright.";
export const opacity = "Opacity";
export const percent = (percentText: string | number) => `${percentText} percent`;
export const pictureUnderTheDrawing = "Picture under the drawing";
export const close = "Close";
export const airPhotoSurveySketch =
  "An air photo, a survey or a sketch to draw upon. It is made small, and what the camera noted, such as where it was taken, is left out.";
export const pixels = (widthPx: string | number, heightPx: string | number) =>
  `, ${widthPx} × ${heightPx} pixels`;
export const hidden = "Hidden";
export const printedPlotMapsToo = "Printed on plot maps too, unless hidden";
export const lockedStaysWhere = "Locked: stays where and as it is";
export const moveItByDragging = "Move it by dragging";
export const deleteThePicture = "Delete the picture";
export const jpegPngWebpDrop = (verb: string | number) =>
  `${verb} (JPEG, PNG or WebP), or drop it here`;
export const scaleKnownLength = "Scale by a known length";
export const markBothEndsSomething =
  "Mark both ends of something whose length you know, such as a wall, then type its length.";
export const stopMarking = "Stop marking";
export const markALength = "Mark a length";
export const lengthBetweenTheMarks = "Length between the marks";
export const scaleThePicture = "Scale the picture";
