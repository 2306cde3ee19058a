// @vitest-environment happy-dom
import { fireEvent } from "@testing-library/preact";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import { followEnter } from "../../src/ui/enter-key.ts";

let ends = () => {};
let clicks: string[] = [];
beforeEach(() => {
  clicks = [];
  document.body.innerHTML = `<a href="#x">skip</a><main><h1 tabindex="-1">Here</h1><input>
    <button disabled data-enter id="held">held</button><button data-enter id="first">first</button>
    <button data-enter id="second">second</button><button id="plain">plain</button></main>`;
  for (const button of document.querySelectorAll("button"))
    button.addEventListener("click", () => clicks.push(button.id));
  ends = followEnter();
});
afterEach(() => {
  ends();
  // Other tests of the same worker look for their own buttons in it.
  document.body.innerHTML = "";
});

const enter = (on: string, more: object = {}) =>
  fireEvent.keyDown(document.querySelector(on) ?? document.body, { key: "Enter", ...more });

describe("Enter where nothing is chosen", () => {
  test("presses the place's first control that can be pressed", () => {
    enter("body");
    enter("h1");
    expect(clicks).toEqual(["first", "first"]);
  });

  test.each(["a", "input", "#plain"])("is left to %s", (on) => {
    enter(on);
    expect(clicks).toEqual([]);
  });

  test("is nothing when held, with another key, taken by someone else, or under a sheet", () => {
    enter("body", { repeat: true });
    enter("body", { ctrlKey: true });
    fireEvent.keyDown(document.body, { key: "x" });
    document.body.insertAdjacentHTML("beforeend", '<div role="dialog"></div>');
    enter("body");
    expect(clicks).toEqual([]);
  });

  test("is not followed any more once that is ended", () => {
    ends();
    enter("body");
    expect(clicks).toEqual([]);
  });
});
