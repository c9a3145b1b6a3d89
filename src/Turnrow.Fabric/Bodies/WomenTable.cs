namespace Turnrow.Fabric.Bodies;

/// <summary>Body measures of women, as published, in both units as published: the one is not always the other converted.</summary>
internal static class WomenTable
{
    public const string Text =
        """
        source,standard body measurements for women,numbers from memory
        measure,unit,XS,S,M,L,XL/1X,XXL/2X,3X,4X,5X
        bust,cm,71-76,81-86,91.5-96.5,101.5-106.5,111.5-117,122-127,132-137,142-147,152-158
        centre-back-neck-to-wrist,cm,68.5-70,71-72.5,73.5-75,76-77.5,78.5-80,80-81.5,82.5-84,82.5-84,84-85
        back-waist-length,cm,42,43,43.5,44.5,45,45.5,45.5,47,47
        cross-back,cm,35.5-37,37-38,39.5-40.5,42-43,44.5,45.5,45.5,47,47
        arm-length,cm,42,43,43,44.5,44.5,45.5,45.5,47,47
        upper-arm,cm,25,26,28,30.5,34.5,39.5,43,47,49.5
        armhole-depth,cm,15.5-16.5,16.5-17.5,17.5-19,19-20.5,20.5-21.5,21.5-23,23-24,24-25.5,25.5-26.5
        waist,cm,58.5-61,63.5-67.5,71-76,81.5-86.5,91.5-96.5,101.5-106.5,111.5-114,116.5-119,124-127
        hips,cm,83.5-86,89-91.5,96.5-101.5,106.5-111.5,116.5-122,132-134.5,137-139.5,142-144.5,155-157
        bust,in,28-30,32-34,36-38,40-42,44-46,48-50,52-54,56-58,60-62
        centre-back-neck-to-wrist,in,27-27.5,28-28.5,29-29.5,30-30.5,31-31.5,31.5-32,32.5-33,32.5-33,33-33.5
        back-waist-length,in,16.5,17,17.25,17.5,17.75,18,18,18.5,18.5
        cross-back,in,14-14.5,14.5-15,15.5-16,16.5-17,17.5,18,18,18.5,18.5
        arm-length,in,16.5,17,17,17.5,17.5,18,18,18.5,18.5
        upper-arm,in,9.75,10.25,11,12,13.5,15.5,17,18.5,19.5
        armhole-depth,in,6-6.5,6.5-7,7-7.5,7.5-8,8-8.5,8.5-9,9-9.5,9.5-10,10-10.5
        waist,in,23-24,25-26.5,28-30,32-34,36-38,40-42,44-45,46-47,49-50
        hips,in,33-34,35-36,38-40,42-44,46-48,52-53,54-55,56-57,61-62
        source,length chart of the same standard,numbers from memory
        hip-length,cm,57,58,58.5,59.5,60,60.5,60.5,62,62
        tunic-length,cm,70,71,71.5,72.5,73,73.5,73.5,75,75
        hip-length,in,22.5,23,23.25,23.5,23.75,24,24,24.5,24.5
        tunic-length,in,27.5,28,28.25,28.5,28.75,29,29,29.5,29.5
        source,size lists of makers of hats and gloves,centimetres converted
        head,cm,51-57,51-57,51-57,51-57,51-57,51-57,51-57,51-57,51-57
        hand,cm,15-19,15-19,15-19,15-19,15-19,15-19,15-19,15-19,15-19
        head,in,20-22.5,20-22.5,20-22.5,20-22.5,20-22.5,20-22.5,20-22.5,20-22.5,20-22.5
        hand,in,6-7.5,6-7.5,6-7.5,6-7.5,6-7.5,6-7.5,6-7.5,6-7.5,6-7.5
        """;
}
