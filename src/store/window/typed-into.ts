/** Fields where letters are text. Boxes, sliders and buttons let letters through. */
export const TYPED_INTO =
  'textarea, select, input:not([type="checkbox"], [type="radio"], [type="range"])';
