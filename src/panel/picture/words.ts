/** Words of picture on the screen. */

export const loadingThePicturesPanel = "Loading the picture's panel ...";
