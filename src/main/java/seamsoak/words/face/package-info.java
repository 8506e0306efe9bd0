/** What is said of the picture of a face; {@link seamsoak.words.face.FaceWords} says all of it. */
package seamsoak.words.face;
