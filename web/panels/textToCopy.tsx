/**
 * The text of a file to copy by hand, for when the browser did not save it.
 */

export function TextToCopy({ text }: { readonly text: string }) {
  return (
    <label class="to-copy">
      <span>Its text, to copy:</span>
      <textarea readOnly rows={4} value={text} onFocus={(event) => event.currentTarget.select()} />
    </label>
  );
}
