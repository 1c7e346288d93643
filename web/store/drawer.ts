/**
 * The browser's store as the page uses it.
 */

/** The little of the browser's store that is used, so that tests can bring their own. */
export interface Drawer {
  readonly length: number;
  key(index: number): string | null;
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
  removeItem(key: string): void;
}
