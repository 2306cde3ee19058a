// A part of the page in, that part alone on paper out: shown outside the page's frame while it is printed, so that
// it breaks over pages like any document. Alone, because labels and lists are printed so, and the page is not.
import { type ComponentChild, render } from "preact";

/** @param print opens the browser's own way of printing; some return at once, and say when it is over. */
export function printOut(content: ComponentChild, print: () => void): void {
  const paper = document.createElement("div");
  paper.className = "print-out";
  document.body.append(paper);
  render(content, paper);
  document.documentElement.dataset.prints = "part";
  window.addEventListener("afterprint", end, { once: true });
  print();

  function end(): void {
    delete document.documentElement.dataset.prints;
    render(null, paper);
    paper.remove();
  }
}
