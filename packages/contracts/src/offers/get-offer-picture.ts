import { defineContract } from '../contract.ts';
import { pictureHash } from '../pictures/picture.ts';
import { examplePicture, PICTURE_MEDIA_TYPES } from '../pictures/upload-picture.ts';
import { exampleOfferToken, offerParams } from './offer.ts';

export const getOfferPicture = defineContract({
  name: 'get-offer-picture',
  method: 'GET',
  path: '/api/offers/:token/pictures/:sha256',
  summary: 'Read a picture of an offer by the client’s link',
  description: 'Only pictures that this offer shows.',
  tag: 'offers',
  roles: 'visitor',
  params: offerParams.extend({ sha256: pictureHash }),
  givesFile: PICTURE_MEDIA_TYPES,
  example: { params: { token: exampleOfferToken, sha256: examplePicture.sha256 } },
});
