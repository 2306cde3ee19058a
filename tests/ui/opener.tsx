// A page with one button that opens a sheet over it, as Work out does: the focus has somewhere to return to.
import { act, fireEvent, render, screen } from "@testing-library/preact";
import type { ComponentChildren } from "preact";
import { useState } from "preact/hooks";

/** Opened by a press of its button. `sheet` is given the way to close it. */
export function openedOver(sheet: (close: () => void) => ComponentChildren): HTMLElement {
  function Page() {
    const [on, setOn] = useState(false);
    return (
      <>
        <button type="button" onClick={() => setOn(true)}>
          opener
        </button>
        {on && sheet(() => setOn(false))}
      </>
    );
  }
  render(<Page />);
  const opener = screen.getByRole("button", { name: "opener" });
  opener.focus();
  act(() => {
    fireEvent.click(opener);
  });
  return opener;
}
