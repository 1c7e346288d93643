/**
 * The button that reads the clamp's profile from a DXF drawing.
 */
import { importDxf } from "../dxf/importDxf.ts";
import { usePage } from "../page.ts";

export function DxfImport() {
  const page = usePage();
  return (
    <label class="button">
      Profile from a DXF drawing
      <input
        type="file"
        class="heard"
        accept=".dxf"
        onChange={(event) => {
          const [file] = event.currentTarget.files ?? [];
          if (file) void importDxf(page, file);
          event.currentTarget.value = "";
        }}
      />
    </label>
  );
}
