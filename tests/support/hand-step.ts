// A STEP file that the exporter has no part in, written by hand from ISO 10303-21 and 10303-42 in the way of large CAD programs: an
// upright cylinder, 10 mm across and 20 mm high, of two whole circles and one seam, which its round face runs up and down again.

export const HAND_CYLINDER = `ISO-10303-21;
/* a comment; with a semicolon */
HEADER;
FILE_DESCRIPTION(('by hand; no''t exported'),'2;1');
FILE_NAME('sleeve','2000-01-01T00:00:00',(''),(''),'','','');
FILE_SCHEMA(('AUTOMOTIVE_DESIGN { 1 0 10303 214 1 1 1 1 }'));
ENDSEC;
DATA;
#10 = SHAPE_DEFINITION_REPRESENTATION ( #11, #20 ) ;
#11 = PRODUCT_DEFINITION_SHAPE('',$,#12);
#12 = PRODUCT_DEFINITION('design','',#13,#15);
#13 = PRODUCT_DEFINITION_FORMATION('','',#14);
#14 = PRODUCT('sleeve','H\\X\\FClse ''a''','',(#16));
#15 = PRODUCT_DEFINITION_CONTEXT('part definition',#17,'design');
#16 = PRODUCT_CONTEXT('',#17,'mechanical');
#17 = APPLICATION_CONTEXT('automotive design');
#20 = ADVANCED_BREP_SHAPE_REPRESENTATION('',(#30,#40),#21);
#21 = ( GEOMETRIC_REPRESENTATION_CONTEXT(3)
  GLOBAL_UNCERTAINTY_ASSIGNED_CONTEXT((#25)) GLOBAL_UNIT_ASSIGNED_CONTEXT((#22,#23,#24))
  REPRESENTATION_CONTEXT('','') );
#22 = ( LENGTH_UNIT() NAMED_UNIT(*) SI_UNIT(.MILLI.,.METRE.) );
#23 = ( NAMED_UNIT(*) PLANE_ANGLE_UNIT() SI_UNIT($,.RADIAN.) );
#24 = ( NAMED_UNIT(*) SI_UNIT($,.STERADIAN.) SOLID_ANGLE_UNIT() );
#25 = UNCERTAINTY_MEASURE_WITH_UNIT(LENGTH_MEASURE(1.E-05),#22,'distance_accuracy_value','');
#30 = AXIS2_PLACEMENT_3D('',#31,#32,#33);
#31 = CARTESIAN_POINT('',(0.,0.,0.));
#32 = DIRECTION('',(0.,0.,1.));
#33 = DIRECTION('',(1.,0.,0.));
#40 = MANIFOLD_SOLID_BREP('',#41);
#41 = CLOSED_SHELL('',(#50,#60,#70));
#42 = VERTEX_POINT('',#43);
#43 = CARTESIAN_POINT('',(5.E+00,0.,0.));
#44 = VERTEX_POINT('',#45);
#45 = CARTESIAN_POINT('',(5.,0.,2.E1));
#46 = AXIS2_PLACEMENT_3D('',#47,#32,#33);
#47 = CARTESIAN_POINT('',(0.,0.,20.));
#50 = ADVANCED_FACE('',(#51),#55,.F.);
#51 = FACE_BOUND('',#52,.F.);
#52 = EDGE_LOOP('',(#53));
#53 = ORIENTED_EDGE('',*,*,#80,.T.);
#55 = PLANE('',#30);
#60 = ADVANCED_FACE('',(#61),#65,.T.);
#61 = FACE_OUTER_BOUND('',#62,.T.);
#62 = EDGE_LOOP('',(#63));
#63 = ORIENTED_EDGE('',*,*,#82,.T.);
#65 = PLANE('',#46);
#70 = ADVANCED_FACE('',(#71),#78,.T.);
#71 = FACE_OUTER_BOUND('',#72,.T.);
#72 = EDGE_LOOP('',(#73,#74,#75,#76));
#73 = ORIENTED_EDGE('',*,*,#80,.T.);
#74 = ORIENTED_EDGE('',*,*,#84,.T.);
#75 = ORIENTED_EDGE('',*,*,#82,.F.);
#76 = ORIENTED_EDGE('',*,*,#84,.F.);
#78 = CYLINDRICAL_SURFACE('',#30,5.);
#80 = EDGE_CURVE('',#42,#42,#81,.T.);
#81 = CIRCLE('',#30,5.);
#82 = EDGE_CURVE('',#44,#44,#83,.T.);
#83 = CIRCLE('',#46,5.);
#84 = EDGE_CURVE('',#42,#44,#85,.T.);
#85 = LINE('',#43,#86);
#86 = VECTOR('',#32,1.);
ENDSEC;
END-ISO-10303-21;
`;
