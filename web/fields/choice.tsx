/**
 * A choice between a few words: radio buttons drawn as a row of tabs on shop paper, or a list when there are many.
 */
export interface Option<T extends string> {
  readonly value: T;
  readonly words: string;
}

interface ChoiceProps<T extends string> {
  readonly label: string;
  readonly options: readonly Option<T>[];
  readonly value: T;
  readonly onChoose: (value: T) => void;
  readonly quiet?: boolean;
}

/** Two to four words side by side. */
export function Choice<T extends string>({ label, options, value, onChoose, quiet }: ChoiceProps<T>) {
  const name = `choice-${label.replaceAll(" ", "-")}`;
  return (
    <fieldset class={`choice${quiet ? " quiet" : ""}`}>
      <legend>{label}</legend>
      <span class="row">
        {options.map((option) => (
          <label key={option.value} class={option.value === value ? "on" : ""}>
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChoose(option.value)}
            />
            <span>{option.words}</span>
          </label>
        ))}
      </span>
    </fieldset>
  );
}

/** A list to pick from. */
export function Pick<T extends string>({
  label,
  options,
  value,
  onChoose,
  id = `pick-${label.replaceAll(" ", "-")}`,
}: ChoiceProps<T> & { readonly id?: string }) {
  return (
    <div class="field pick">
      <label for={id}>{label}</label>
      <select id={id} value={value} onChange={(event) => onChoose(event.currentTarget.value as T)}>
        {options.map((option) => (
          <option key={option.value} value={option.value}>
            {option.words}
          </option>
        ))}
      </select>
    </div>
  );
}
