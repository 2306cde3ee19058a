// A language tag in, the way its script runs out. Alone, because browsers have told it in two ways.

interface TextInfo {
  readonly direction?: "ltr" | "rtl";
}

/** What newer engines know of a locale, and older ones by another name. */
type Told = Intl.Locale & {
  readonly getTextInfo?: () => TextInfo;
  readonly textInfo?: TextInfo;
};

/** From left to right where the browser does not say. */
export function directionOf(tag: string): "ltr" | "rtl" {
  const locale: Told = new Intl.Locale(tag);
  return (locale.getTextInfo?.() ?? locale.textInfo)?.direction ?? "ltr";
}
