//! A photo as it comes from a phone, to one that may be kept: its kind known by its bytes, its size bounded, and made
//! anew, so that nothing but the picture is left of it.
//!
//! Takes bytes; gives two JPEGs. Knows no store and no page. Never trusts a name or a stated type.

use crate::store::Photo;
use image::codecs::jpeg::JpegEncoder;
use image::metadata::Orientation;
use image::{DynamicImage, ImageDecoder, ImageFormat, ImageReader, Limits};
use std::io::Cursor;

/// Most of one photo. Units: bytes. Source: our choice; phones of 50 million pixels stay below.
pub const BYTES_MOST: usize = 12 * 1024 * 1024;
/// Longest side that is read. Units: px.
const SIDE_MOST: u32 = 10_000;
/// Memory that reading one may take. Units: bytes.
const MEMORY_MOST: u64 = 192 * 1024 * 1024;
/// Longest side that is kept, and of the one in lists. Units: px. Source: our choice; a seal or a gauge reads well.
const WHOLE: u32 = 1_600;
const SMALL: u32 = 240;
const QUALITY: u8 = 78;

/// Why a photo cannot be kept.
#[derive(Debug, Clone, Copy, PartialEq, Eq, thiserror::Error)]
pub enum Unfit {
    #[error("it is neither JPEG, PNG nor WebP")]
    Kind,
    #[error("it has more bytes or pixels than are read")]
    Big,
    #[error("its bytes are damaged")]
    Damaged,
}

/// The photo made anew, upright. Takes up to a second of work: not for a thread that others wait on.
pub fn made_anew(bytes: &[u8]) -> Result<Photo, Unfit> {
    if bytes.len() > BYTES_MOST {
        return Err(Unfit::Big);
    }
    let kind = image::guess_format(bytes).map_err(|_| Unfit::Kind)?;
    if !matches!(kind, ImageFormat::Jpeg | ImageFormat::Png | ImageFormat::WebP) {
        return Err(Unfit::Kind);
    }
    let picture = read(bytes, kind).map_err(|error| match error {
        image::ImageError::Limits(_) => Unfit::Big,
        _ => Unfit::Damaged,
    })?;
    Ok(Photo { whole: jpeg(&picture, WHOLE)?, small: jpeg(&picture, SMALL)? })
}

fn read(bytes: &[u8], kind: ImageFormat) -> image::ImageResult<DynamicImage> {
    let mut limits = Limits::default();
    limits.max_image_width = Some(SIDE_MOST);
    limits.max_image_height = Some(SIDE_MOST);
    limits.max_alloc = Some(MEMORY_MOST);
    let mut reader = ImageReader::with_format(Cursor::new(bytes), kind);
    reader.limits(limits.clone());
    let mut decoder = reader.into_decoder()?;
    // Of what the camera wrote beside the picture, only which side is up is heeded.
    let up = decoder.orientation().unwrap_or(Orientation::NoTransforms);
    limits.reserve(decoder.total_bytes())?;
    let mut picture = DynamicImage::from_decoder(decoder)?;
    picture.apply_orientation(up);
    Ok(picture)
}

fn jpeg(picture: &DynamicImage, longest: u32) -> Result<Vec<u8>, Unfit> {
    let fits = picture.width().max(picture.height()) <= longest;
    let picture = if fits { picture.to_rgb8() } else { picture.thumbnail(longest, longest).to_rgb8() };
    let mut bytes = Vec::new();
    JpegEncoder::new_with_quality(&mut bytes, QUALITY).encode_image(&picture).map_err(|_| Unfit::Damaged)?;
    Ok(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;
    use image::{Rgb, RgbImage};

    fn written(wide: u32, tall: u32, kind: ImageFormat) -> Vec<u8> {
        let picture =
            RgbImage::from_fn(wide, tall, |x, _| if x < wide / 2 { Rgb([200, 30, 30]) } else { Rgb([20, 20, 200]) });
        let mut bytes = Cursor::new(vec![]);
        DynamicImage::ImageRgb8(picture).write_to(&mut bytes, kind).expect("written");
        bytes.into_inner()
    }

    /// A JPEG with a camera's notes: turned a quarter, and a place that somebody must not read.
    fn with_notes() -> Vec<u8> {
        let plain = written(40, 20, ImageFormat::Jpeg);
        let mut notes = b"Exif\0\0II*\0\x08\0\0\0\x01\0\x12\x01\x03\0\x01\0\0\0\x06\0\0\0\0\0\0\0".to_vec();
        notes.extend(b"GPS 0.1022 S 34.7617 E");
        let mut bytes = plain[..2].to_vec();
        bytes.extend([0xff, 0xe1]);
        bytes.extend(((notes.len() + 2) as u16).to_be_bytes());
        bytes.extend(notes);
        bytes.extend(&plain[2..]);
        bytes
    }

    #[test]
    fn each_kind_becomes_a_jpeg_that_is_no_larger_than_is_kept() {
        for kind in [ImageFormat::Jpeg, ImageFormat::Png, ImageFormat::WebP] {
            let photo = made_anew(&written(2_400, 1_200, kind)).expect("a photo");
            for (bytes, longest) in [(&photo.whole, WHOLE), (&photo.small, SMALL)] {
                assert_eq!(image::guess_format(bytes).expect("known"), ImageFormat::Jpeg);
                let picture = image::load_from_memory(bytes).expect("reads");
                assert_eq!((picture.width(), picture.height()), (longest, longest / 2), "{kind:?}");
            }
        }
    }

    #[test]
    fn the_cameras_notes_are_gone_and_the_picture_stands_upright() {
        let bytes = with_notes();
        let holds = |bytes: &[u8], what: &[u8]| bytes.windows(what.len()).any(|part| part == what);
        assert!(holds(&bytes, b"GPS 0.1022"));
        let photo = made_anew(&bytes).expect("a photo");
        assert!(!holds(&photo.whole, b"GPS") && !holds(&photo.whole, b"Exif") && !holds(&photo.small, b"GPS"));
        let picture = image::load_from_memory(&photo.whole).expect("reads").to_rgb8();
        assert_eq!((picture.width(), picture.height()), (20, 40), "turned by a quarter");
        assert!(picture.get_pixel(10, 5)[0] > 150 && picture.get_pixel(10, 35)[2] > 150, "left is up");
    }

    #[test]
    fn what_is_no_photo_is_told_by_its_bytes() {
        let gif = b"GIF89a\x01\0\x01\0\0\0\0;";
        for other in [&b""[..], b"<svg onload=alert(1)>", b"<html>", gif, b"%PDF-1.4", b"BM123456"] {
            assert_eq!(made_anew(other), Err(Unfit::Kind), "{other:?}");
        }
        let png = written(300, 200, ImageFormat::Png);
        assert_eq!(made_anew(&png[..png.len() / 2]), Err(Unfit::Damaged));
        assert_eq!(made_anew(&vec![0; BYTES_MOST + 1]), Err(Unfit::Big));
    }

    /// A picture of a few bytes that would unfold to gigabytes.
    #[test]
    fn a_picture_that_unfolds_too_far_is_not_read() {
        let mut png = written(4, 4, ImageFormat::Png);
        let wide = [(9_999_u32, 9_999_u32), (60_000, 60_000), (20_000, 1)];
        for (width, height) in wide {
            png[16..20].copy_from_slice(&width.to_be_bytes());
            png[20..24].copy_from_slice(&height.to_be_bytes());
            let sum = crc(&png[12..29]);
            png[29..33].copy_from_slice(&sum.to_be_bytes());
            assert_eq!(made_anew(&png), Err(Unfit::Big), "{width} by {height}");
        }
    }

    /// The check sum of a PNG's part. Source: PNG (ISO/IEC 15948), annex D.
    fn crc(bytes: &[u8]) -> u32 {
        let byte =
            |sum: u32, byte: &u8| (0..8).fold(sum ^ u32::from(*byte), |sum, _| (sum >> 1) ^ (0xedb8_8320 * (sum & 1)));
        !bytes.iter().fold(u32::MAX, byte)
    }
}
