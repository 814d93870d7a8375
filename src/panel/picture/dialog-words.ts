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
export const choosePicture = "Choose a picture (JPEG, PNG or WebP), or drop it here";
export const anotherPicture = "Another picture (JPEG, PNG or WebP), or drop it here";
export const scaleKnownLength = "Scale by a known length";
export const markBothEndsSomething =
  "Mark both ends of something whose length you know, such as a wall, then type its length.";
export const stopMarking = "Stop marking";
export const markALength = "Mark a length";
export const lengthBetweenTheMarks = "Length between the marks";
export const scaleThePicture = "Scale the picture";
export const tooWide = "That is wider than any plan";
export const wouldBeTooWide = "The picture would be wider than any plan";
export const movePicture = "Move the picture";
export const turnPicture = "Turn the picture";
export const fadePicture = "Fade the picture";
export const hidePicture = "Hide the picture";
export const showPicture = "Show the picture";
export const printPicture = "Print the picture";
export const keepOffPaper = "Keep the picture off paper";
export const lockPicture = "Lock the picture";
export const unlockPicture = "Unlock the picture";
export const makingSmall = "Making the picture small ...";
export const marksApart = (length: string) =>
  `The marks are ${length} apart as the picture lies now.`;
export const lengthNeeded = "A length must be more than nothing";
export const becomesLarger = (times: number, width: string) =>
  `The picture becomes ${times} times larger: ${width} wide on the ground.`;
export const becomesSmaller = (times: number, width: string) =>
  `The picture becomes ${times} times smaller: ${width} wide on the ground.`;
