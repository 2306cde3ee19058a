// What the tests use of a parser that comes without types.
declare const webvtt: {
  readonly WebVTTParser: new () => {
    parse(
      text: string,
      mode: "captions",
    ): {
      readonly cues: readonly {
        readonly startTime: number;
        readonly endTime: number;
        readonly text: string;
      }[];
      readonly errors: readonly { readonly message: string; readonly line: number }[];
    };
  };
};
export default webvtt;
