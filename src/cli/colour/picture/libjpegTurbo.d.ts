declare module '@cornerstonejs/codec-libjpeg-turbo-8bit/decodewasmjs' {
  interface JpegDecoder {
    /** Room for the file, to be filled. */
    getEncodedBuffer(length: number): Uint8Array;
    decode(): void;
    getFrameInfo(): { readonly width: number; readonly height: number; readonly componentCount: number };
    /** As many bytes a pixel as there are components. */
    getDecodedBuffer(): Uint8Array;
    delete(): void;
  }
  const codec: () => Promise<{ readonly JPEGDecoder: new () => JpegDecoder }>;
  export default codec;
}
