/**
 * Keeps one panel's fault to itself: the rest of the card goes on, and the job is kept as it is.
 */
import type { ComponentChildren } from "preact";
import { useEffect, useErrorBoundary } from "preact/hooks";
import { usePage } from "../page.ts";

export function Guarded({ children }: { readonly children: ComponentChildren }) {
  const { snapshot, standing } = usePage();
  const [fault, tryAgain] = useErrorBoundary();
  useEffect(() => {
    if (fault) tryAgain();
  }, [snapshot, standing]);
  if (!fault) return <>{children}</>;
  return (
    <section class="panel">
      <p class="below problem">
        This part of the card can’t be shown with these figures. Your job is kept: undo the last change, or
        save it as a file.
      </p>
    </section>
  );
}
