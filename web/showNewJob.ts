/**
 * Shows that another job lies open: the page at its top, the hand in the part's name, ready to be typed over.
 */
export function showNewJob(): void {
  // Once the fields show the new job.
  requestAnimationFrame(() => {
    scrollTo(0, 0);
    const name = document.getElementById("field-part-name");
    if (!(name instanceof HTMLInputElement)) return;
    name.focus({ preventScroll: true });
    name.select();
  });
}
