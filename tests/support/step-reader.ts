// Reads a STEP file in OpenCASCADE, which the product does not use: is it one valid solid, how large, with which surfaces?

import init, { type OpenCascadeInstance } from "replicad-opencascadejs";

export interface StepReading {
  readonly solids: number;
  /** OpenCASCADE's own check of topology and geometry. */
  readonly isValid: boolean;
  /** How far vertices and edges lie from one another where they should meet: the reader mends, so this must be asked. */
  readonly looseness: number;
  /** From the exact surfaces, in mm³. */
  readonly volume: number;
  readonly faces: number;
  /** Faces on cylinders. */
  readonly cylinders: number;
}

let opened: Promise<OpenCascadeInstance> | null = null;

/** 23 MB of kernel: opened once for a test file, without a word on the console. */
export const openStepReader = (): Promise<OpenCascadeInstance> => {
  opened ??= init({ print: () => undefined, printErr: () => undefined });
  return opened;
};

export const readStep = (text: string, kernel: OpenCascadeInstance): StepReading => {
  const path = "/part.step";
  kernel.FS.writeFile(path, text);
  const reader = new kernel.STEPControl_Reader();
  const status = reader.ReadFile(path);
  if (status !== kernel.IFSelect_ReturnStatus.IFSelect_RetDone)
    throw new Error("OpenCASCADE cannot read the file");
  reader.TransferRoots(new kernel.Message_ProgressRange());
  const shape = reader.OneShape();
  const properties = new kernel.GProp_GProps();
  kernel.BRepGProp.VolumeProperties(shape, properties, 1e-9, false, false);
  const { TopAbs_SOLID, TopAbs_FACE, TopAbs_SHAPE } = kernel.TopAbs_ShapeEnum;
  let solids = 0;
  for (
    const of = new kernel.TopExp_Explorer(shape, TopAbs_SOLID, TopAbs_SHAPE);
    of.More();
    of.Next()
  )
    solids += 1;
  let faces = 0;
  let cylinders = 0;
  for (
    const of = new kernel.TopExp_Explorer(shape, TopAbs_FACE, TopAbs_SHAPE);
    of.More();
    of.Next()
  ) {
    const surface = new kernel.BRepAdaptor_Surface(kernel.TopoDS.Face(of.Current()), true);
    faces += 1;
    if (surface.GetType() === kernel.GeomAbs_SurfaceType.GeomAbs_Cylinder) cylinders += 1;
  }
  return {
    solids,
    isValid: new kernel.BRepCheck_Analyzer(shape, true, false, false).IsValid(),
    looseness: kernel.BRep_Tool.MaxTolerance(shape, kernel.TopAbs_ShapeEnum.TopAbs_VERTEX),
    volume: properties.Mass(),
    faces,
    cylinders,
  };
};
