/**
 * A button that opens job files from the disk, several at once.
 */
export function OpenFiles({
  words,
  onFiles,
}: {
  readonly words: string;
  readonly onFiles: (files: readonly File[]) => void;
}) {
  return (
    <label class="button">
      {words}
      <input
        type="file"
        class="heard"
        accept=".json,application/json"
        multiple
        onChange={(event) => {
          // The list empties with the field, so the files are taken out of it first.
          onFiles([...(event.currentTarget.files ?? [])]);
          event.currentTarget.value = "";
        }}
      />
    </label>
  );
}
