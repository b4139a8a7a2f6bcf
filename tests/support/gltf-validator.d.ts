// What the tests use of the Khronos validator (gltf-validator, Apache-2.0), which comes without types.

declare module "gltf-validator" {
  export interface ValidationMessage {
    readonly code: string;
    readonly message: string;
    /** 0 error, 1 warning, 2 information, 3 hint. */
    readonly severity: number;
    readonly pointer?: string;
  }
  export interface ValidationReport {
    readonly issues: {
      readonly numErrors: number;
      readonly numWarnings: number;
      readonly messages: readonly ValidationMessage[];
    };
    readonly info: {
      readonly version: string;
      readonly totalTriangleCount: number;
      readonly totalVertexCount: number;
      readonly extensionsUsed?: readonly string[];
    };
  }
  export const validateBytes: (bytes: Uint8Array) => Promise<ValidationReport>;
  const validator: { readonly validateBytes: typeof validateBytes };
  export default validator;
}
